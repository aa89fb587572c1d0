import { sayDate, shownPart } from "#domain";
import { sayLevel, sayUsual } from "#words";
import { type ChartCell, type ChartRow, type ChartTable, emptyCell } from "../frame/chartTable.ts";
import type { CurvePoint, ProgressData, ProgressSession } from "./progress.ts";

/** A lap time as read, and in seconds for a spreadsheet: to the same decimals. */
export function timeCell(ms: number | undefined, decimals = 3): ChartCell {
  if (ms === undefined) return emptyCell;
  return { text: sayUsual(ms, decimals), value: shownPart(Math.round(ms), decimals) / 1000 };
}

function levelCell(ms: number | undefined): ChartCell {
  return ms === undefined ? emptyCell : { text: sayLevel(ms), value: Math.round(ms / 10) / 100 };
}

/** The sessions of the progress chart, oldest first, then the forecast where there is one. */
export function progressTable({
  sessions,
  curve = [],
}: Pick<ProgressData, "sessions" | "curve">): ChartTable {
  return {
    columns: [
      { key: "date", title: "session", csvTitle: "date", unbroken: true },
      { key: "laps", title: "pace laps", csvTitle: "pace_laps", figures: true },
      { key: "usual", title: "usual", csvTitle: "usual_s", figures: true, strong: true },
      { key: "from", title: "half from", csvTitle: "half_from_s", figures: true },
      { key: "to", title: "to", csvTitle: "half_to_s", figures: true },
      { key: "best", title: "best pace lap", csvTitle: "best_pace_lap_s", figures: true },
      { key: "bestOfTen", title: "best of ten", csvTitle: "best_of_ten_s", figures: true },
      { key: "page", title: "page", csvTitle: "page" },
    ],
    rows: [
      ...sessions.map(sessionRow),
      ...curve.filter((point) => point.half !== undefined).map(forecastRow),
    ],
  };
}

function sessionRow(session: ProgressSession): ChartRow {
  return {
    id: session.id,
    soft: !session.isPresentPage,
    cells: {
      date: { text: sayDate(session.date), value: session.date },
      laps: { text: String(session.laps), value: session.laps },
      usual: timeCell(session.median, session.medianDecimals),
      from: timeCell(session.q1, session.medianDecimals),
      to: timeCell(session.q3, session.medianDecimals),
      best: timeCell(session.best, session.bestDecimals),
      bestOfTen: timeCell(session.bestOfTen, session.medianDecimals),
      page: { text: session.isPresentPage ? "present" : "older" },
    },
  };
}

function forecastRow(point: CurvePoint): ChartRow {
  return {
    id: `forecast-${point.date}`,
    soft: true,
    cells: {
      date: { text: sayDate(point.date), value: point.date },
      usual: levelCell(point.ms),
      from: levelCell(point.half?.[0]),
      to: levelCell(point.half?.[1]),
      page: { text: "forecast" },
    },
  };
}
