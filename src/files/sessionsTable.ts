import { type AllRows, formatLapTime, type Run, type Session, shownPart } from "#domain";
import { type CsvTable, exportSessions, startOf } from "./exportRows.ts";

/** What the other pages say of a session: laps driven, clean ones among those written lap by lap, and its best. */
export interface SessionCounts {
  readonly laps: number;
  readonly clean: number;
  readonly best: { readonly ms: number; readonly decimals: number } | undefined;
}

/**
 * Every session that is not deleted, one a row, with its number of laps and its best clean lap; guests' laps left out.
 * @param countsOf the counts of a session, as the pages have them
 */
export function sessionsTable(
  rows: AllRows,
  countsOf: (session: Session, runs: readonly Run[]) => SessionCounts,
): CsvTable {
  const head = [
    "date",
    "time of day",
    "time zone",
    "car",
    "track",
    "layout",
    "session",
    "focus",
    "conditions",
    "runs",
    "laps",
    "clean laps",
    "best clean lap",
    "seconds",
    "session note",
  ];
  return [
    head,
    ...exportSessions(rows).map(({ session, ofTheDay, car, track, layout, runs }) => {
      const { date, clock, zone } = startOf(session);
      const own = runs.flatMap(({ run }) => (run.guest === undefined ? [run] : []));
      const { laps, clean, best } = countsOf(session, own);
      return [
        { figures: date },
        { figures: clock },
        zone,
        car.name,
        track.name,
        layout.name,
        ofTheDay,
        session.focus,
        session.conditions ?? "",
        own.length,
        laps,
        clean,
        best ? { figures: formatLapTime(best.ms, best.decimals) } : "",
        best ? { figures: (shownPart(best.ms, best.decimals) / 1000).toFixed(best.decimals) } : "",
        session.note,
      ];
    }),
  ];
}
