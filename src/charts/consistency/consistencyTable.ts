import { type CalendarDate, sayDate, sayDay } from "#domain";
import { type ChartCell, type ChartTable, emptyCell } from "../frame/chartTable.ts";

/** The scatter of one session's pace laps in percent of its usual lap; absent with too few laps. */
export interface ConsistencySession {
  readonly id: string;
  readonly date: CalendarDate;
  /** For the order of sessions within a day, epoch ms. */
  readonly startedAt: number;
  readonly scatterPercent?: number | undefined;
  /** 90 % interval of the scatter, percent. */
  readonly intervalPercent?: readonly [number, number] | undefined;
  readonly laps: number;
  readonly isPresentPage: boolean;
}

function percentCell(percent: number | undefined): ChartCell {
  return percent === undefined
    ? emptyCell
    : { text: `${percent.toFixed(2)} %`, value: Number(percent.toFixed(3)) };
}

/** The sessions of the consistency chart, oldest first. */
export function consistencyTable(sessions: readonly ConsistencySession[]): ChartTable {
  return {
    columns: [
      { key: "date", title: "session", csvTitle: "date", unbroken: true },
      { key: "laps", title: "pace laps", csvTitle: "pace_laps", figures: true },
      { key: "scatter", title: "scatter", csvTitle: "scatter_percent", figures: true, strong: true },
      { key: "from", title: "very likely from", csvTitle: "interval_90_from_percent", figures: true },
      { key: "to", title: "to", csvTitle: "interval_90_to_percent", figures: true },
      { key: "page", title: "page", csvTitle: "page" },
    ],
    rows: sessions.map((session) => ({
      id: session.id,
      soft: !session.isPresentPage,
      cells: {
        date: { text: sayDate(session.date), value: session.date },
        laps: { text: String(session.laps), value: session.laps },
        scatter: percentCell(session.scatterPercent),
        from: percentCell(session.intervalPercent?.[0]),
        to: percentCell(session.intervalPercent?.[1]),
        page: { text: session.isPresentPage ? "present" : "older" },
      },
    })),
  };
}

/** A session of the consistency chart in words: "Tuesday 3 August: scatter 0.41 %, very likely 0.30 to 0.62 %, 24 pace laps". */
export function sayConsistency(session: ConsistencySession): string {
  const { date, scatterPercent, intervalPercent, laps } = session;
  const say = (percent: number) => percent.toFixed(2);
  const scatter = scatterPercent === undefined ? "too few laps" : `scatter ${say(scatterPercent)} %`;
  const sure =
    intervalPercent === undefined
      ? ""
      : `, very likely ${say(intervalPercent[0])} to ${say(intervalPercent[1])} %`;
  return `${sayDay(date)}: ${scatter}${sure}, ${laps === 1 ? "1 pace lap" : `${laps} pace laps`}`;
}
