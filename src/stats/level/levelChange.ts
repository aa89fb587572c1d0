import { type Figure, known } from "#domain";
import { type ChangeOfLevel, changeOfLevel } from "./changeOfLevel.ts";
import { levelModel } from "./levelModel.ts";
import { levelNow } from "./levelNow.ts";
import type { LevelQuestion } from "./levelPosterior.ts";

/** A change of level, and whether it has come to rest. */
export interface LevelChange extends ChangeOfLevel {
  /** Probability that it no longer moves. */
  readonly chanceLevel: number;
  /** Number of the session since when it no longer moves, where that may be said. */
  readonly levelSince?: number;
}

/**
 * Change of level from an earlier session to the last, ms, below 0 faster. Our methods, §5.
 * @param since number of the earlier session; one older than the last 250 counts as the first of these
 * @param confidence of the interval, a fraction
 * @returns a reason with fewer than 2 sessions
 * @throws RangeError for a value that is not finite or out of its range, naming it
 */
export function levelChange({
  since,
  confidence,
  ...question
}: LevelQuestion & { readonly since: number; readonly confidence: number }): Figure<LevelChange> {
  const model = levelModel(question);
  if (!model.known) return model;
  const { chanceLevel, levelSince } = levelNow(model.value.posterior);
  return known({
    ...changeOfLevel(model.value, since, confidence),
    chanceLevel,
    ...(levelSince === undefined ? {} : { levelSince }),
  });
}
