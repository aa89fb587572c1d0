import { type CalendarDate, sayDate } from "#domain";
import { type ChartTable, emptyCell } from "../frame/chartTable.ts";

/** One combo on the chart across combos. */
export interface AcrossCombo {
  readonly id: string;
  readonly name: string;
  /** Day of its first session, and its start for the order within the day. */
  readonly date: CalendarDate;
  readonly startedAt: number;
  readonly laps: number;
  /** The figure; absent with too few laps. */
  readonly value?: number | undefined;
}

/** How the figure is called and written. */
export interface AcrossWords {
  /** At the head of its column. */
  readonly column: string;
  /** Above the upright axis. */
  readonly axis: string;
  readonly say: (value: number) => string;
}

/** The combos of the chart in the order first driven. */
export function acrossTable(combos: readonly AcrossCombo[], { column, say }: AcrossWords): ChartTable {
  return {
    columns: [
      { key: "combo", title: "combo", csvTitle: "combo" },
      { key: "date", title: "first driven", csvTitle: "first_driven", unbroken: true },
      { key: "laps", title: "laps", csvTitle: "laps", figures: true },
      { key: "value", title: column, csvTitle: column.replaceAll(" ", "_"), figures: true, strong: true },
    ],
    rows: combos.map(({ id, name, date, laps, value }) => ({
      id,
      cells: {
        combo: { text: name },
        date: { text: sayDate(date), value: date },
        laps: { text: String(laps), value: laps },
        value: value === undefined ? emptyCell : { text: say(value), value: Number(value.toFixed(3)) },
      },
    })),
  };
}

/** A combo of the chart in words: "Varnholt Ring · club hatch, first driven Tue 1 Sep 2026: 0.41 %, 120 laps". */
export function sayAcrossCombo({ name, date, laps, value }: AcrossCombo, { say }: AcrossWords): string {
  const figure = value === undefined ? "too few laps" : say(value);
  return `${name}, first driven ${sayDate(date)}: ${figure}, ${laps === 1 ? "1 lap" : `${laps} laps`}`;
}
