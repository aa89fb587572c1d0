import { useState } from "react";
import { Choice } from "#ui/Choice.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import styles from "./Across.module.css";
import { type AcrossSide, acrossColumns, type NamedLine, sortedBy } from "./acrossColumns.tsx";

interface Sorting {
  readonly key: string;
  readonly direction: "ascending" | "descending";
}

const sides = [
  { value: "percent", label: "in percent" },
  { value: "standing", label: "times and targets" },
] as const;

/** All combos in one table that sorts by any column; each leads to its review. */
export function AcrossTable({ rows }: { readonly rows: readonly NamedLine[] }) {
  const [side, setSide] = useState<AcrossSide>("percent");
  const [wanted, setWanted] = useState<Sorting>({ key: "last", direction: "descending" });
  const columns = acrossColumns[side];
  const by = columns.find(({ key }) => key === wanted.key) ?? columns.at(-1);
  if (by === undefined) return null;
  const { direction } = wanted;

  const sort = (key: string) => {
    const isTurned = key === by.key && direction === "ascending";
    setWanted({ key, direction: isTurned ? "descending" : "ascending" });
  };
  return (
    <div className={styles["table"]}>
      <Choice label="Columns" labelHidden value={side} options={sides} onChange={setSide} />
      <RuledTable
        caption={`All combos, by ${by.title}, ${direction}`}
        captionHidden
        columns={columns.map(({ key, title, figures = false }) => ({
          key,
          title,
          figures,
          sorted: key === by.key ? direction : "none",
          onSort: () => sort(key),
        }))}
        rows={sortedBy(rows, by, direction).map((row) => ({
          id: row.line.comboId,
          cells: Object.fromEntries(columns.map(({ key, cell }) => [key, cell(row)])),
        }))}
      />
    </div>
  );
}
