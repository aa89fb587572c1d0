/** One cell of the table behind a chart: what is read, and what a spreadsheet gets where that differs. */
export interface ChartCell {
  readonly text: string;
  readonly value?: number | string;
}

export interface ChartColumn {
  readonly key: string;
  readonly title: string;
  /** Heading in the CSV file, with the unit in it: "usual_s". */
  readonly csvTitle: string;
  readonly figures?: boolean;
  readonly unbroken?: boolean;
  readonly strong?: boolean;
}

export interface ChartRow {
  readonly id: string;
  readonly cells: Readonly<Record<string, ChartCell>>;
  readonly soft?: boolean;
}

/** The figures of a chart as rows and columns. The first column heads the row. */
export interface ChartTable {
  readonly columns: readonly ChartColumn[];
  readonly rows: readonly ChartRow[];
  readonly balance?: ChartRow;
}

/** A cell for a figure that is not known. */
export const emptyCell: ChartCell = { text: "—", value: "" };

/** The table as cells of a CSV file: first the headings, then rows, then the balance. */
export function csvCells(table: ChartTable): readonly (readonly (string | number)[])[] {
  const rows = table.balance === undefined ? table.rows : [...table.rows, table.balance];
  return [
    table.columns.map((column) => column.csvTitle),
    ...rows.map((row) =>
      table.columns.map((column) => {
        const cell = row.cells[column.key];
        return cell?.value ?? cell?.text ?? "";
      }),
    ),
  ];
}
