import type { ReactNode } from "react";
import { Name } from "#ui/Name.tsx";
import styles from "./FigureRows.module.css";

/** A figure that each row has. */
export interface FigureColumn<R> {
  readonly key: string;
  readonly title: string;
  /** A picture or words, from the left; else digits, from the right. */
  readonly isWide?: true;
  readonly cell: (row: R) => ReactNode;
}

/** What a row is about, and where its name leads. */
export interface FigureRow<R> {
  readonly id: string;
  readonly name: string;
  readonly href?: string;
  readonly row: R;
}

interface FigureRowsProps<R> {
  /** What the list is of. */
  readonly label: string;
  /** At the head of the names. */
  readonly of: string;
  /** Which of the style sheet's sets of columns the rows have on a desk. */
  readonly set: "weeks" | "circuits" | "driven" | "against" | "targets";
  readonly columns: readonly FigureColumn<R>[];
  readonly rows: readonly FigureRow<R>[];
  /** The sum, under a double rule. */
  readonly balance?: FigureRow<R> | undefined;
}

/**
 * Rows of figures that never scroll sideways: one line each on a desk and on paper, under the names of the figures; on a
 * phone each figure under its own name, the wanted ones first.
 */
export function FigureRows<R>({ label, of, set, columns, rows, balance }: FigureRowsProps<R>) {
  return (
    <div data-set={set} className={styles["rows"]}>
      <div aria-hidden="true" className={styles["heads"]}>
        <span>{of}</span>
        {columns.map(({ key, title, isWide }) => (
          <span key={key} data-wide={isWide}>
            {title}
          </span>
        ))}
      </div>
      <ol className={styles["list"]} aria-label={label}>
        {rows.map((row) => (
          <OneRow key={row.id} {...row} columns={columns} />
        ))}
        {balance !== undefined && <OneRow {...balance} columns={columns} isBalance />}
      </ol>
    </div>
  );
}

interface OneRowProps<R> extends FigureRow<R>, Pick<FigureRowsProps<R>, "columns"> {
  readonly isBalance?: true;
}

function OneRow<R>({ name, href, row, columns, isBalance }: OneRowProps<R>) {
  return (
    <li data-balance={isBalance} className={styles["row"]}>
      {href === undefined ? (
        <span className={styles["name"]}>
          <Name>{name}</Name>
        </span>
      ) : (
        <a href={href} className={styles["name"]}>
          <Name>{name}</Name>
        </a>
      )}
      <dl className={styles["figures"]}>
        {columns.map(({ key, title, isWide, cell }) => (
          <div key={key} data-wide={isWide}>
            <dt>{title}</dt>
            <dd>{cell(row)}</dd>
          </div>
        ))}
      </dl>
    </li>
  );
}
