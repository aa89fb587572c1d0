import {
  type AllRows,
  type Car,
  type Id,
  isKnownZone,
  type Lap,
  type Layout,
  lapsInOrder,
  practiceDay,
  type Run,
  type Session,
  type Track,
  timeOfDay,
} from "#domain";
import type { CsvCell } from "./writeCsv.ts";

/** A table to be written: its first row is its head. */
export type CsvTable = readonly (readonly CsvCell[])[];

interface Names {
  readonly car: Pick<Car, "name">;
  readonly track: Pick<Track, "name">;
  readonly layout: Pick<Layout, "name">;
}

/** A run with its laps; those that were deleted are left out. */
export interface ExportRun {
  readonly run: Run;
  readonly laps: readonly Lap[];
}

/** A session with its runs. */
export interface ExportSession extends Names {
  readonly session: Session;
  /** Place among the sessions of its combo on its day, from 1. */
  readonly ofTheDay: number;
  readonly runs: readonly ExportRun[];
}

const live = <R extends { readonly deletedAt?: number }>(rows: readonly R[]) =>
  rows.filter(({ deletedAt }) => deletedAt === undefined);
const unknown = { name: "" };

/** When a session began, as a table tells it. */
interface Start {
  readonly date: string;
  readonly clock: string;
  readonly zone: string;
}

/**
 * Date and clock at which a session began, as its driver's wall had them, and the zone of that wall; no clock where it is
 * not known. Where this browser does not know the zone, all of it is told in UTC, and says so: the instant stays right.
 */
export function startOf(session: Session): Start {
  const { startedAt, isTimeOfDayKnown, date } = session;
  const zone = isKnownZone(session.zone) ? session.zone : "UTC";
  if (!isTimeOfDayKnown) return { date, clock: "", zone };
  return { date: practiceDay(startedAt, zone, 0), clock: timeOfDay(startedAt, zone), zone };
}

/** The names of a combo by its id; empty where a part of it is gone. */
export function namesOfCombos(rows: AllRows): (comboId: Id) => Names {
  const byId = <R extends { readonly id: Id }>(table: readonly R[]) =>
    new Map(table.map((row) => [row.id, row]));
  const [cars, tracks, layouts, combos] = [
    byId(rows.cars),
    byId(rows.tracks),
    byId(rows.layouts),
    byId(rows.combos),
  ];
  return (comboId) => {
    const combo = combos.get(comboId);
    const layout = combo && layouts.get(combo.layoutId);
    const track = layout && tracks.get(layout.trackId);
    return {
      car: (combo && cars.get(combo.carId)) ?? unknown,
      track: track ?? unknown,
      layout: layout ?? unknown,
    };
  };
}

/** Every session that is not deleted with its runs, oldest first. */
export function exportSessions(rows: AllRows): ExportSession[] {
  const runsOf = new Map<Id, Run[]>();
  for (const run of live(rows.runs)) runsOf.set(run.sessionId, [...(runsOf.get(run.sessionId) ?? []), run]);
  const namesOf = namesOfCombos(rows);
  const count = new Map<string, number>();
  return live(rows.sessions)
    .sort((a, b) => a.startedAt - b.startedAt || (a.id < b.id ? -1 : 1))
    .map((session) => {
      const day = `${session.comboId} ${session.date}`;
      const ofTheDay = (count.get(day) ?? 0) + 1;
      count.set(day, ofTheDay);
      const runs = (runsOf.get(session.id) ?? []).sort((a, b) => a.n - b.n || (a.id < b.id ? -1 : 1));
      return {
        session,
        ofTheDay,
        ...namesOf(session.comboId),
        runs: runs.map((run) => ({ run, laps: lapsInOrder(run) })),
      };
    });
}
