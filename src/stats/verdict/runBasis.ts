import {
  type CalendarDate,
  daysBetween,
  type Figure,
  known,
  leastForSpread,
  type Surface,
  unknown,
} from "#domain";
import { median, quantile, studentTQuantile } from "#numbers";
import { seasonBegins } from "../combo/season.ts";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { levelCurve } from "../level/levelCurve.ts";
import { type LevelModel, levelModel } from "../level/levelModel.ts";
import { successiveScatter } from "../pace/successiveScatter.ts";
import { type PageSession, pageEvents, pageHistory } from "../period/pageHistory.ts";
import type { Band } from "../weeks/bands.ts";
import { BREAK_DAYS } from "../weeks/longestPause.ts";
import { onSurface } from "./onSurface.ts";
import { paceRuns } from "./paceRuns.ts";

/** What a run is judged by: all of it from before its session, so it is the same for every run of an evening. */
export interface RunBasis {
  /** The level as it was known when the session began, ms; a reason with fewer than two sessions of five pace laps. */
  readonly level: Figure<number>;
  /** How the driver's own runs of the last twelve weeks lie about the level; a reason with fewer than six. */
  readonly spread: Figure<RunSpread>;
  /** Scatters of these runs, ms, and the quartile under which a run is steady; a reason with fewer than six. */
  readonly scatters: Figure<RunScatters>;
  /** The last break of ten days or more, with the laps driven since, up to the session; undefined without one. */
  readonly pause: { readonly days: number; readonly lapsSince: number } | undefined;
}

/** Distances of run medians from the level. */
export interface RunSpread {
  /**
   * s: 1.645 of it hold nine runs in ten about the level. It allows for the few sessions it is known from, and for how well
   * the level is known.
   */
  readonly s: number;
  /** How far each of the runs lay from the level at its session, ms; below 0 faster. */
  readonly distances: readonly number[];
}

export interface RunScatters {
  readonly lowerQuartile: number;
  readonly each: readonly number[];
}

/** What a basis is worked out from. */
export interface RunBasisInput {
  /** Digests of the session's page, and of the combo on all its pages, in any order. */
  readonly page: readonly SessionDigest[];
  readonly driven: readonly SessionDigest[];
  readonly session: { readonly startedAt: number; readonly date: CalendarDate };
  readonly surface: Surface;
}

/** A quantile of the normal distribution beyond which one in twenty lies on either side. */
export const ONE_IN_TEN = 1.645;
const LEAST_RUNS = 6;
/** The level takes two of the sessions it is known from: where it lies, and whether it moves. */
const TAKEN_BY_LEVEL = 2;

/**
 * What the runs of a session are judged by. Our methods, §4. The level is that of §5 for the surface, from the sessions
 * before. Distances are taken from it as it is seen now at each session; s is their root mean square, widened for the
 * sessions (Student's t with two degrees fewer than there are) and by what is not known of the level itself, so that a
 * driver who has not changed is told faster or slower in one run in ten.
 */
export function runBasis({ page, driven, session, surface }: RunBasisInput): RunBasis {
  const isBefore = ({ startedAt }: SessionDigest) => startedAt < session.startedAt;
  const before = driven.filter(isBefore);
  const there = page.filter(isBefore).map((digest) => onSurface(digest, surface));
  const history = pageHistory(there, before);
  const model = levelModel({ sessions: history, events: pageEvents(history, history.at(-1)?.date ?? "") });
  const curve = model.known ? levelCurve(model.value) : [];
  const now = curve.at(-1);
  const lately = lateRuns(there, history, surface, { from: seasonBegins(session.date), curve, model });
  const scatters = lately.flatMap(({ scatter }) => (scatter === undefined ? [] : [scatter]));
  return {
    level: model.known ? known((now as Band).mid) : model,
    spread:
      now === undefined ? unknown({ needs: LEAST_RUNS, of: "pace run", has: 0 }) : spreadOf(lately, now),
    scatters:
      scatters.length < LEAST_RUNS
        ? unknown({ needs: LEAST_RUNS, of: "pace run", has: scatters.length })
        : known({ lowerQuartile: quantile(scatters, 0.25) as number, each: scatters }),
    pause: lastPause(before, session.date),
  };
}

interface LateRun {
  readonly sessionId: string;
  /** From the level, ms; undefined where none is known for its session. */
  readonly distance: number | undefined;
  readonly scatter: number | undefined;
}

/** The driver's runs with five pace laps of the sessions since a day. */
function lateRuns(
  there: readonly SessionDigest[],
  history: readonly PageSession[],
  surface: Surface,
  { from, curve, model }: { from: CalendarDate; curve: readonly Band[]; model: Figure<LevelModel> },
): LateRun[] {
  const first = model.known ? model.value.posterior.series.from : 0;
  const levels = new Map(history.slice(first).map(({ sessionId }, index) => [sessionId, curve[index]?.mid]));
  return there
    .filter(({ date }) => date >= from)
    .flatMap((digest) =>
      paceRuns(digest, surface)
        .filter(({ times }) => times.length >= leastForSpread)
        .map(({ times, chains }): LateRun => {
          const level = levels.get(digest.sessionId);
          const exact = chains.reduce((sum, chain) => sum + chain.length, 0);
          return {
            sessionId: digest.sessionId,
            distance: level === undefined ? undefined : (median(times) as number) - level,
            scatter: exact < leastForSpread ? undefined : successiveScatter(chains),
          };
        }),
    );
}

function spreadOf(lately: readonly LateRun[], now: Band): Figure<RunSpread> {
  const runs = lately.filter(({ distance }) => distance !== undefined);
  const distances = runs.map(({ distance }) => distance as number);
  if (distances.length < LEAST_RUNS)
    return unknown({ needs: LEAST_RUNS, of: "pace run", has: distances.length });
  const sessions = new Set(runs.map(({ sessionId }) => sessionId)).size;
  const degrees = sessions - TAKEN_BY_LEVEL;
  if (degrees < 1)
    return unknown({
      needs: TAKEN_BY_LEVEL + 1,
      of: "session",
      each: { needs: leastForSpread, of: "pace lap" },
      has: sessions,
    });
  const meanSquare = distances.reduce((sum, ms) => sum + ms ** 2, 0) / distances.length;
  const ofLevel = (now.high - now.low) / 2 / ONE_IN_TEN;
  const spread = Math.sqrt((meanSquare * sessions) / (sessions - 1) + ofLevel ** 2);
  return known({ s: (spread * studentTQuantile(0.95, degrees)) / ONE_IN_TEN, distances });
}

/** The last pause of ten days or more before a session, up to it, and the laps driven on the combo since. */
function lastPause(before: readonly SessionDigest[], date: CalendarDate): RunBasis["pause"] {
  const sessions = before.filter(isDrivenSession).toSorted((a, b) => a.startedAt - b.startedAt);
  let lapsSince = 0;
  let next = date;
  for (const { date: day, counts } of sessions.reverse()) {
    const days = daysBetween(day, next);
    if (days >= BREAK_DAYS) return { days, lapsSince };
    lapsSince += counts.driven;
    next = day;
  }
  return undefined;
}
