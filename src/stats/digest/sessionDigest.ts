import { type Focus, type LapCounts, lapPlaces, lapWorths, type Run, type Session } from "#domain";
import { type BestCandidate, bestCandidates } from "../bests/bestCandidates.ts";
import { fastestOf } from "../bests/fastestOf.ts";
import type { Choices } from "../laps/choices.ts";
import { type PlacedLap, sessionLaps } from "../laps/sessionLaps.ts";
import { type PaceFigures, paceFigures } from "../pace/paceFigures.ts";
import { type RunFacts, runFacts } from "./runFacts.ts";

/** Goes up whenever a digest would come out otherwise for the same rows, as it does when places of laps are added. */
export const methodVersion = 11;

/** Stands for no time in the typed arrays. */
export const NO_TIME = -1;

/** A session in short: all that the figures over weeks need, without its laps' rows. Laps of guests are not in it. */
export interface SessionDigest {
  readonly methodVersion: number;
  /** The driver's choices it was made with. */
  readonly settlingLaps: number;
  readonly displayDecimals: number;
  readonly sessionId: string;
  readonly comboId: string;
  readonly date: string;
  readonly startedAt: number;
  readonly focus: Focus;
  readonly targetMs: number | undefined;
  /** One entry a lap in order, ms; −1 for none. */
  readonly times: Int32Array;
  /** Place of each lap, as its index in `lapPlaces`. */
  readonly places: Uint8Array;
  /** What each lap may stand for, as its index in `lapWorths`. */
  readonly worths: Uint8Array;
  /** 1 for a lap that is good enough for a spread (not from memory, known to all decimals), else 0. */
  readonly exact: Uint8Array;
  /** Indices of the laps that the driver confirmed as odd. */
  readonly odd: readonly number[];
  /** Index of the lap's run among the driver's own runs of the session. */
  readonly runs: Uint16Array;
  /** What each of those runs was driven with. */
  readonly runFacts: readonly RunFacts[];
  /** Sectors a lap; 0 where none were written. */
  readonly sectorCount: number;
  /** Sector times lap after lap, ms; −1 for none. */
  readonly sectors: Int32Array;
  readonly counts: LapCounts;
  readonly guestLaps: number;
  readonly mistakes: number;
  readonly timedDriven: number;
  readonly timed: number;
  readonly clean: number;
  readonly pace: PaceFigures;
  /** Fastest clean lap, whatever kind of run. */
  readonly bestClean: BestCandidate | undefined;
  readonly bestCandidates: readonly BestCandidate[];
  /** Time at the wheel, ms: all lap times, and the usual one for each lap without. */
  readonly drivingMs: number;
  /** From the first moment of the session to its last, ms; undefined where that was not noted. */
  readonly sittingMs: number | undefined;
}

/**
 * The digest of a session.
 * @param session its row
 * @param runs its runs in any order, without deleted ones
 * @param choices settling laps and decimals of the display
 * @returns plain data that can be cloned between threads and stored
 */
export function sessionDigest(session: Session, runs: readonly Run[], choices: Choices): SessionDigest {
  const sorted = sessionLaps(session, runs, choices);
  const { laps, counts } = sorted;
  const candidates = bestCandidates(sorted, session.startedAt);
  const pace = paceFigures(laps);
  const sectorCount = Math.max(0, ...laps.map((placed) => placed.lap.sectors?.length ?? 0));
  const known = laps.reduce((sum, placed) => sum + (placed.lap.ms ?? 0), 0);
  const withTime = laps.filter((placed) => placed.lap.ms !== undefined).length;
  const usual = pace.median ?? (withTime === 0 ? 0 : known / withTime);
  const drivingMs = Math.round(known + (counts.driven - withTime) * usual);
  return {
    methodVersion,
    settlingLaps: choices.settlingLaps,
    displayDecimals: choices.displayDecimals,
    sessionId: session.id,
    comboId: session.comboId,
    date: session.date,
    startedAt: session.startedAt,
    focus: session.focus,
    targetMs: session.targetMs,
    times: Int32Array.from(laps, (placed) => placed.lap.ms ?? NO_TIME),
    places: Uint8Array.from(laps, (placed) => lapPlaces.indexOf(placed.place)),
    worths: Uint8Array.from(laps, (placed) => lapWorths.indexOf(placed.worth)),
    exact: Uint8Array.from(laps, (placed) => (placed.isExact ? 1 : 0)),
    odd: laps.flatMap((placed, index) => (placed.lap.isOdd === true ? [index] : [])),
    runs: Uint16Array.from(laps, (placed) => placed.run),
    runFacts: sorted.runs.map(runFacts),
    sectorCount,
    sectors: sectorTimes(laps, sectorCount),
    counts,
    guestLaps: sorted.guestLaps,
    mistakes: sorted.mistakes,
    timedDriven: sorted.timedDriven,
    timed: sorted.timed,
    clean: sorted.clean,
    pace,
    bestClean: fastestOf(candidates),
    bestCandidates: candidates,
    drivingMs,
    sittingMs: sittingOf(session, laps, drivingMs),
  };
}

/** Nobody sits for more than a day: a clock jumped, or the session was left open. Common practice, no source. */
export const longestSittingMs = 86_400_000;

/**
 * A session entered afterwards has no end of its own, nor has an imported one: a table says when laps were driven, not
 * when the driver stood up. An end before the wheel can have been let go of, or in that very moment, is none either.
 */
function sittingOf(
  { startedAt, endedAt, isTimeOfDayKnown }: Session,
  laps: readonly PlacedLap[],
  drivingMs: number,
): number | undefined {
  const isImported = laps.length > 0 && laps.every(({ lap }) => lap.source === "imported");
  if (!isTimeOfDayKnown || endedAt === undefined || isImported) return undefined;
  const sitting = endedAt - startedAt;
  return sitting > drivingMs && sitting <= longestSittingMs ? sitting : undefined;
}

function sectorTimes(laps: readonly PlacedLap[], count: number): Int32Array {
  const times = new Int32Array(laps.length * count).fill(NO_TIME);
  laps.forEach((placed, index) => {
    if (placed.lap.sectors?.length === count) times.set(placed.lap.sectors, index * count);
  });
  return times;
}
