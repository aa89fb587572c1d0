import { type Figure, known, unknown } from "#domain";
import { lapsForMedian } from "../pace/lapsForMedian.ts";
import { type LevelPosterior, type LevelQuestion, levelPosterior } from "./levelPosterior.ts";
import { type SmoothLevels, smoothLevels } from "./smoothLevels.ts";

/** One pass over a page's sessions, from which every question about its level is answered. */
export interface LevelModel {
  readonly posterior: LevelPosterior;
  readonly levels: SmoothLevels;
  /** Fewer than four sessions: what is said comes from the assumptions more than from the laps. */
  readonly isMostlyAssumption: boolean;
}

const LEAST_SESSIONS = 2;
/** From fewer sessions what is said comes from the assumptions of the model more than from the laps. */
export const SESSIONS_TO_KNOW = 4;

/**
 * The level model of a page: ask it by `changeOfLevel`, `levelNow`, `levelCurve`, `futureLevels`, `levelsOff` and
 * `typicalError`. Our methods, §5.
 * @returns a reason with fewer than 2 sessions
 * @throws RangeError for a value that is not finite or out of its range, naming it
 */
export function levelModel(question: LevelQuestion): Figure<LevelModel> {
  const posterior = levelEnd(question);
  if (!posterior.known) return posterior;
  return known({
    posterior: posterior.value,
    levels: smoothLevels(posterior.value),
    isMostlyAssumption: isMostlyAssumption(question.sessions.length),
  });
}

/**
 * Only what the level is after the last session, for those who ask about what is to come.
 * @returns a reason with fewer than 2 sessions
 * @throws RangeError for a value that is not finite or out of its range, naming it
 */
export function levelEnd(question: LevelQuestion): Figure<LevelPosterior> {
  const { length } = question.sessions;
  if (length < LEAST_SESSIONS)
    return unknown({ needs: LEAST_SESSIONS, of: "session", each: lapsForMedian, has: length });
  return known(levelPosterior(question));
}

/** Whether so few sessions say less than the assumptions of the model. */
export function isMostlyAssumption(sessions: number): boolean {
  return sessions < SESSIONS_TO_KNOW;
}
