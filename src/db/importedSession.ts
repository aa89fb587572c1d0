import type { CalendarDate, Id, Lap, Run, Session } from "#domain";
import type { NewLap } from "./writes/laps.ts";

export interface ImportedRun {
  readonly settings: Pick<Run, "kind" | "effort" | "surface" | "note"> &
    Partial<Pick<Run, "tyres" | "fuelLitres" | "setup" | "assists" | "guest">>;
  readonly laps: readonly { readonly lap: NewLap }[];
}

/** A session that comes from a table, its combo by names. */
export interface ImportedSession extends Partial<Pick<Session, "focus" | "note" | "conditions">> {
  /** Made when the table was read, so that importing again makes no second session. */
  readonly id: Id;
  readonly car: string;
  readonly track: string;
  /** Empty for a track's only layout. */
  readonly layout: string;
  readonly sectors?: number;
  readonly date: CalendarDate;
  readonly startedAt: number;
  readonly isTimeOfDayKnown: boolean;
  readonly zone: string;
  readonly runs: readonly ImportedRun[];
}

/** A session that is in the book, and its laps in order. */
export interface SessionThere {
  readonly id: Id;
  readonly laps: readonly Pick<Lap, "ms">[];
}

export interface NewPart {
  /** For each run, its laps that are not there yet. */
  readonly runs: readonly (readonly { readonly lap: NewLap }[])[];
  /** Number of laps that are there already. */
  readonly known: number;
  /** The session in the book that holds some of them: the others belong to it. */
  readonly into: Id | undefined;
}

/**
 * Which laps of a session are there already: same combo, same date, same time, and as often as it stands there, so that
 * a table can be imported again after it has grown. A lap without a time counts as there only where a timed one is, or
 * where the session has none.
 */
export function newPart({ runs }: ImportedSession, there: readonly SessionThere[]): NewPart {
  const waiting = new Map<number | undefined, Id[]>();
  for (const { id, laps } of there)
    for (const { ms } of laps) waiting.set(ms, [...(waiting.get(ms) ?? []), id]);
  const laps = runs.flatMap((run) => run.laps);
  const hasTimed = laps.some(({ lap }) => lap.ms !== undefined);
  const isMet = laps.some(({ lap }) => lap.ms !== undefined && waiting.has(lap.ms));
  let known = 0;
  let into: Id | undefined;
  const isThere = (ms: number | undefined) => {
    if (ms === undefined && hasTimed && !isMet) return false;
    const found = waiting.get(ms)?.shift();
    if (found === undefined) return false;
    known += 1;
    into ??= found;
    return true;
  };
  return { runs: runs.map((run) => run.laps.filter(({ lap }) => !isThere(lap.ms))), known, into };
}
