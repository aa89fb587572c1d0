import type { ChartTable } from "../frame/chartTable.ts";
import type { RangeRow } from "./RangeRows.tsx";

/** How figures and the ends of their intervals are told. */
export interface RangeWords {
  /** A value with its unit, as read in table and point. */
  readonly say: (value: number) => string;
  /** Unit in the heading of the CSV file: "s", "percent". */
  readonly csvUnit: string;
  /** What a value is divided by there. */
  readonly csvDivisor?: number;
}

/** The ends of a row's interval in words. */
export function endsOf({ low, high, ends }: RangeRow, { say }: Pick<RangeWords, "say">) {
  return ends ?? ([say(low), say(high)] as const);
}

/** Figures with their intervals. */
export function rangeRowsTable(rows: readonly RangeRow[], words: RangeWords): ChartTable {
  const { say, csvUnit, csvDivisor = 1 } = words;
  const cell = (value: number, text: string) => ({ text, value: Number((value / csvDivisor).toFixed(4)) });
  return {
    columns: [
      { key: "figure", title: "figure", csvTitle: "figure" },
      { key: "value", title: "value", csvTitle: `value_${csvUnit}`, figures: true, strong: true },
      { key: "low", title: "very likely from", csvTitle: `interval_90_from_${csvUnit}`, figures: true },
      { key: "high", title: "to", csvTitle: `interval_90_to_${csvUnit}`, figures: true },
    ],
    rows: rows.map((row) => {
      const { id, label, value, low, high, soft = false } = row;
      const [lowText, highText] = endsOf(row, words);
      const cells = {
        figure: { text: label },
        value: cell(value, say(value)),
        low: cell(low, lowText),
        high: cell(high, highText),
      };
      return { id, soft, cells };
    }),
  };
}
