import {
  isExact,
  isMistake,
  isPartlyWritten,
  type Lap,
  type LapCounts,
  type LapPlace,
  type LapWorth,
  lapsDriven,
  lapsInPlace,
  noCounts,
  notWritten,
  type Run,
  type Session,
  worthOf,
} from "#domain";
import type { Choices } from "./choices.ts";

/** A lap of the driver's own with all that the figures ask about it. */
export interface PlacedLap {
  readonly lap: Lap;
  /** Index into the runs of `SessionLaps`. */
  readonly run: number;
  /** Place in its run, from 0. */
  readonly index: number;
  readonly place: LapPlace;
  /** The session's start and the time driven up to the lap's end, epoch ms: right in order, rough in time. */
  readonly at: number;
  readonly worth: LapWorth;
  readonly isTimed: boolean;
  readonly isClean: boolean;
  /** Clean, and not taken back as a best. */
  readonly mayBeBest: boolean;
  readonly isMistake: boolean;
  readonly isExact: boolean;
}

/** The laps of a session in order, without those of guests. */
export interface SessionLaps {
  readonly runs: readonly Run[];
  readonly laps: readonly PlacedLap[];
  readonly counts: LapCounts;
  /** Laps that a guest drove, in no count. */
  readonly guestLaps: number;
  /** Own mistakes, those of summary runs included. */
  readonly mistakes: number;
  /** Timed laps of the driver's own, as far as written, and laps not written down: practice, for the curve. */
  readonly timedDriven: number;
  /** Timed and clean laps of runs written lap by lap: what remains of a remembered run is no fair sample. */
  readonly timed: number;
  readonly clean: number;
}

/**
 * Sorts the laps of a session into their places.
 * @param runs of the session, in any order, without deleted ones
 */
export function sessionLaps(
  session: Pick<Session, "startedAt">,
  runs: readonly Run[],
  choices: Choices,
): SessionLaps {
  const ordered = runs.toSorted((a, b) => a.n - b.n || (a.id < b.id ? -1 : 1));
  const own = ordered.filter((run) => run.guest === undefined);
  const guests = ordered.filter((run) => run.guest !== undefined);
  const counts = noCounts();
  const laps: PlacedLap[] = [];
  let mistakes = 0;
  let timed = 0;
  let clean = 0;
  own.forEach((run, index) => {
    const placed = placedRun(run, index, laps.at(-1)?.at ?? session.startedAt, choices);
    const missing = notWritten(run, placed.length);
    counts.notWritten += missing;
    counts.driven += missing + placed.length;
    for (const lap of placed) counts[lap.place]++;
    mistakes += Math.max(placed.filter((lap) => lap.isMistake).length, run.summary?.off ?? 0);
    if (!isPartlyWritten(run, placed.length)) {
      timed += placed.filter((lap) => lap.isTimed).length;
      clean += placed.filter((lap) => lap.isClean).length;
    }
    laps.push(...placed);
  });
  const timedDriven = counts.notWritten + laps.filter((lap) => lap.isTimed).length;
  const guestLaps = guests.reduce((sum, run) => sum + lapsDriven(run), 0);
  return { runs: own, laps, counts, guestLaps, mistakes, timedDriven, timed, clean };
}

/**
 * The laps of one run in their places.
 * @param index index of the run, for the laps to carry
 * @param startedAt when its first lap began, epoch ms
 */
export function placedRun(run: Run, index: number, startedAt: number, choices: Choices): PlacedLap[] {
  let at = startedAt;
  return lapsInPlace(run, choices.settlingLaps).map(({ lap, place }, number) => {
    at += lap.ms ?? 0;
    const worth = worthOf(lap);
    return {
      lap,
      run: index,
      index: number,
      place,
      at,
      worth,
      isTimed: worth !== "none",
      isClean: worth === "clean" || worth === "best",
      mayBeBest: worth === "best",
      isMistake: isMistake(lap),
      isExact: isExact(lap, choices.displayDecimals),
    };
  });
}
