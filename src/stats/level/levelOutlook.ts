import { type Figure, known } from "#domain";
import { type Band, bandOf } from "../weeks/bands.ts";
import type { FutureSession } from "../weeks/history.ts";
import { type ChangeOfLevel, changeOfLevel } from "./changeOfLevel.ts";
import { futureLevels } from "./futureLevels.ts";
import { levelCurve } from "./levelCurve.ts";
import { levelAfter } from "./levelKnown.ts";
import { levelModel } from "./levelModel.ts";
import { type LevelNow, levelNow } from "./levelNow.ts";
import type { LevelQuestion } from "./levelPosterior.ts";
import { type LevelsOff, levelsOff } from "./levelsOff.ts";
import { type TypicalError, typicalError } from "./typicalError.ts";

/** What is asked about a page's level. */
export interface LevelOutlookQuestion extends LevelQuestion {
  /** Numbers of the sessions since which the change is asked for. */
  readonly since: readonly number[];
  /** Sessions to come, in order. */
  readonly future?: readonly FutureSession[];
  /** Whole number that belongs to the combo, so that the same laps always give the same answers. */
  readonly seed: number;
}

/** All that the level answers, from one pass. */
export interface LevelOutlook extends LevelNow, TypicalError {
  /** Sessions it rests on; older ones are left out because there are too many. */
  readonly sessions: number;
  readonly sessionsLeftOut: number;
  /** Level now, and at each of those sessions, in ms, with 50 and 90 % bands. */
  readonly now: Band;
  readonly curve: readonly Band[];
  /** One answer for each session asked about, with 90 % intervals. */
  readonly changes: readonly ChangeOfLevel[];
  /** Medians of the sessions to come. */
  readonly bands: readonly Band[];
  readonly levelsOff: LevelsOff;
  /** Fewer than four sessions: what is said comes from the assumptions more than from the laps. */
  readonly isMostlyAssumption: boolean;
}

/**
 * Every answer about a page's level at once: what it was and is, how far it has moved, whether it still moves, what is to
 * come. All screens that say one of these ask here, so that the same question has the same answer. Our methods, §5.
 * @returns a reason with fewer than 2 sessions
 * @throws RangeError for a value that is not finite or out of its range, naming it
 */
export function levelOutlook(question: LevelOutlookQuestion): Figure<LevelOutlook> {
  const { since, future = [], seed } = question;
  const found = levelModel(question);
  if (!found.known) return found;
  const model = found.value;
  const { posterior } = model;
  return known({
    sessions: posterior.series.count,
    sessionsLeftOut: posterior.series.from,
    now: levelAfter(posterior),
    curve: levelCurve(model),
    changes: since.map((session) => changeOfLevel(model, session)),
    ...levelNow(posterior),
    bands: futureLevels(posterior, future, seed).medians.map(bandOf),
    levelsOff: levelsOff(model, seed),
    ...typicalError(posterior),
    isMostlyAssumption: model.isMostlyAssumption,
  });
}
