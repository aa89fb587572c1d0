import type { ChartTable } from "../frame/chartTable.ts";
import type { RangeRow } from "./RangeRows.tsx";

/** Figures with their intervals. */
export function rangeRowsTable(
  rows: readonly RangeRow[],
  say: (value: number) => string,
  csvUnit: string,
  csvDivisor: number,
): ChartTable {
  const cell = (value: number) => ({ text: say(value), value: Number((value / csvDivisor).toFixed(4)) });
  return {
    columns: [
      { key: "figure", title: "figure", csvTitle: "figure" },
      { key: "value", title: "value", csvTitle: `value_${csvUnit}`, figures: true, strong: true },
      { key: "low", title: "9 in 10 sure from", csvTitle: `interval_90_from_${csvUnit}`, figures: true },
      { key: "high", title: "to", csvTitle: `interval_90_to_${csvUnit}`, figures: true },
    ],
    rows: rows.map(({ id, label, value, low, high, soft = false }) => ({
      id,
      soft,
      cells: { figure: { text: label }, value: cell(value), low: cell(low), high: cell(high) },
    })),
  };
}
