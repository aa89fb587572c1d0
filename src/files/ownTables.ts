import { noRows } from "#domain";
import { lapsTable } from "./lapsTable.ts";
import { rigsTable } from "./rigsTable.ts";
import { sessionsTable } from "./sessionsTable.ts";
import { targetsTable } from "./targetsTable.ts";

/** A table that is written here and holds no laps. */
export interface OwnTable {
  /** "the table of targets" */
  readonly name: string;
  readonly heads: readonly string[];
}

/** A driver may have taken a column out; one more makes it a table of their own. */
const fewestHeads = 0.75;

const headOf = ([head = []]: ReturnType<typeof lapsTable>) => head.map(String);
const ofLaps = new Set(headOf(lapsTable(noRows)));

/** The exported tables without laps. */
export const exportedWithoutLaps: readonly OwnTable[] = [
  {
    name: "the table of sessions",
    heads: headOf(sessionsTable(noRows, () => ({ laps: 0, clean: 0, best: undefined }))),
  },
  { name: "the table of targets", heads: headOf(targetsTable(noRows)) },
  { name: "the table of rig records", heads: headOf(rigsTable(noRows)) },
];

/**
 * The one of these tables that a row of cells is the head of: most of its names that no table of laps has, and nothing
 * added.
 */
export function ownTableOf(cells: readonly string[], tables: readonly OwnTable[]): OwnTable | undefined {
  const found = new Set(cells.map((cell) => cell.trim().toLowerCase()));
  return tables.find(({ heads }) => {
    const own = heads.filter((head) => !ofLaps.has(head)).map((head) => head.toLowerCase());
    const there = own.filter((head) => found.has(head)).length;
    return cells.length <= heads.length && there > 0 && there >= fewestHeads * own.length;
  });
}
