/** A row that cannot be taken. */
export interface BadRow {
  readonly table: string;
  /** Its place in the table, from 1. */
  readonly place: number;
  readonly why: string;
  /** The row itself, as the file has it: of any shape, and of any depth. */
  readonly row: unknown;
}
