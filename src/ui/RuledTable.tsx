import type { ReactNode } from "react";
import { classes } from "./classes.ts";
import styles from "./RuledTable.module.css";
import { Spoken } from "./Spoken.tsx";
import { useOverflow } from "./useOverflow.ts";

export interface Column {
  readonly key: string;
  readonly title: string;
  /** Right-aligned, never wrapped: times, differences, counts. */
  readonly figures?: boolean;
  /** Never wrapped: dates, short words. */
  readonly unbroken?: boolean;
  /** The column that matters most, in heavier ink. */
  readonly strong?: boolean;
  /** How the rows are sorted by this column, where its heading is a button that sorts them. */
  readonly sorted?: "ascending" | "descending" | "none";
  readonly onSort?: () => void;
}

export interface Row {
  readonly id: string;
  /** What stands under each column key; a missing key is an empty cell. The first column heads the row. */
  readonly cells: Readonly<Record<string, ReactNode>>;
  /** A row that does not count, in soft ink; its words must say why. */
  readonly soft?: boolean;
}

export interface RuledTableProps {
  readonly caption: string;
  readonly captionHidden?: boolean;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** The sum, under a double rule. */
  readonly balance?: Row | undefined;
}

/** Rows of figures on ruled lines. Too wide for the page, it scrolls in its own box, which then takes focus. */
export function RuledTable({ caption, captionHidden, columns, rows, balance }: RuledTableProps) {
  const { box, overflows } = useOverflow();
  const focusable = overflows ? { tabIndex: 0, role: "region", "aria-label": caption } : {};
  return (
    <div ref={box} className={styles["box"]} {...focusable}>
      <table className={styles["table"]}>
        <caption className={captionHidden === true ? undefined : styles["caption"]}>
          {captionHidden === true ? <Spoken>{caption}</Spoken> : caption}
        </caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th
                key={column.key}
                scope="col"
                aria-sort={column.sorted}
                className={classes(column.figures === true && styles["figures"])}
              >
                {column.onSort === undefined ? column.title : <SortButton column={column} />}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <RuledRow key={row.id} row={row} columns={columns} />
          ))}
        </tbody>
        {balance !== undefined && (
          <tfoot>
            <RuledRow row={balance} columns={columns} />
          </tfoot>
        )}
      </table>
    </div>
  );
}

const arrows = { ascending: "↑", descending: "↓", none: "" } as const;

function SortButton({ column: { title, sorted = "none", onSort } }: { readonly column: Column }) {
  return (
    <button type="button" className={styles["sort"]} onClick={onSort}>
      {title}
      <span aria-hidden="true" className={styles["arrow"]}>
        {arrows[sorted]}
      </span>
    </button>
  );
}

function RuledRow({ row, columns }: { readonly row: Row; readonly columns: readonly Column[] }) {
  return (
    <tr className={classes(row.soft === true && styles["soft"])}>
      {columns.map((column, index) => {
        const names = classes(
          column.figures === true && styles["figures"],
          column.unbroken === true && styles["unbroken"],
          column.strong === true && styles["strong"],
        );
        const content = row.cells[column.key];
        return index === 0 ? (
          <th key={column.key} scope="row" className={names}>
            {content}
          </th>
        ) : (
          <td key={column.key} className={names}>
            {content}
          </td>
        );
      })}
    </tr>
  );
}
