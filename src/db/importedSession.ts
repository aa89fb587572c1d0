import { type CalendarDate, type Id, type Lap, type Run, type Session, shownPart } from "#domain";
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
  readonly laps: readonly Pick<Lap, "ms" | "decimals">[];
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
 * a table can be imported again after it has grown. Of a lap that counts as more than its decimals show, older
 * tables hold only what is shown: it is there too where no other lap is. A lap without a time counts as there only where a
 * timed one is, or where the session has none.
 */
export function newPart({ runs }: ImportedSession, there: readonly SessionThere[]): NewPart {
  const waiting = new Waiting(there);
  const laps = runs.flatMap((run) => run.laps);
  const timed = laps.filter(({ lap }) => lap.ms !== undefined);
  const found = new Map<object, Id>();
  const find = (some: typeof laps, take: (lap: NewLap) => Id | undefined) => {
    for (const one of some) {
      const id = found.has(one) ? undefined : take(one.lap);
      if (id !== undefined) found.set(one, id);
    }
  };
  find(timed, (lap) => waiting.same(lap));
  find(timed, (lap) => waiting.shownAs(lap));
  if (timed.length === 0 || found.size > 0)
    find(
      laps.filter(({ lap }) => lap.ms === undefined),
      (lap) => waiting.same(lap),
    );
  const first = laps.find((one) => found.has(one));
  return {
    runs: runs.map((run) => run.laps.filter((one) => !found.has(one))),
    known: found.size,
    into: first && found.get(first),
  };
}

interface WaitingLap {
  readonly sessionId: Id;
  readonly ms: number | undefined;
  readonly decimals: number | undefined;
}

/** The laps that are there, each to be found once. */
class Waiting {
  readonly #same = new Map<number | undefined, WaitingLap[]>();
  readonly #shown = new Map<string, WaitingLap[]>();
  readonly #taken = new Set<WaitingLap>();

  constructor(there: readonly SessionThere[]) {
    for (const { id, laps } of there)
      for (const { ms, decimals } of laps) {
        const lap = { sessionId: id, ms, decimals };
        put(this.#same, ms, lap);
        if (ms !== undefined) put(this.#shown, shownKey({ ms, decimals }), lap);
      }
  }

  same({ ms }: NewLap): Id | undefined {
    return this.#take(this.#same.get(ms));
  }

  /** A lap that is shown alike, where either the table or the book holds no more than that. */
  shownAs({ ms, decimals }: NewLap): Id | undefined {
    if (ms === undefined) return undefined;
    const alike = this.#shown.get(shownKey({ ms, decimals })) ?? [];
    return this.#take(isAllShown({ ms, decimals }) ? alike : alike.filter(isAllShown));
  }

  #take(laps: readonly WaitingLap[] = []): Id | undefined {
    const lap = laps.find((one) => !this.#taken.has(one));
    if (lap === undefined) return undefined;
    this.#taken.add(lap);
    return lap.sessionId;
  }
}

const isAllShown = ({ ms = 0, decimals = 3 }: { ms?: number | undefined; decimals?: number | undefined }) =>
  shownPart(ms, decimals) === ms;

const shownKey = ({ ms, decimals = 3 }: { readonly ms: number; readonly decimals?: number | undefined }) =>
  `${shownPart(ms, decimals)} ${decimals}`;

function put<K>(map: Map<K, WaitingLap[]>, key: K, lap: WaitingLap): void {
  map.set(key, [...(map.get(key) ?? []), lap]);
}
