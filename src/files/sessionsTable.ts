import { type AllRows, formatLapTime, isClean, shownPart } from "#domain";
import { type CsvTable, exportSessions, startOf } from "./exportRows.ts";

/** Every session that is not deleted, one a row, with its number of laps and its best clean lap; guests' laps left out. */
export function sessionsTable(rows: AllRows): CsvTable {
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
      const own = runs.filter(({ run }) => run.guest === undefined);
      const laps = own.flatMap((run) => run.laps);
      const clean = laps.filter(isClean);
      const best = clean.reduce<(typeof clean)[number] | undefined>(
        (fastest, lap) => (fastest === undefined || lap.ms < fastest.ms ? lap : fastest),
        undefined,
      );
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
        laps.length,
        clean.length,
        best ? { figures: formatLapTime(best.ms, best.decimals) } : "",
        best ? { figures: (shownPart(best.ms, best.decimals ?? 3) / 1000).toFixed(best.decimals) } : "",
        session.note,
      ];
    }),
  ];
}
