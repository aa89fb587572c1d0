import type { Figure } from "#domain";
import type { ForecastRecord, RecordAgainstSaid, RecordFifth } from "#stats";
import { sayChance, TWENTY } from "./chance.ts";
import { asSentence, counted } from "./counted.ts";
import { sayLacking, sayTooFew } from "./reason.ts";

const LEAST_FORECASTS = 5;

/**
 * Whether the app's own record can be squared with the chances it told.
 * @example "The chances fit what came so far: 4 of 9 targets were reached, about 5 were to be expected."
 */
export function sayRecord(against: Figure<RecordAgainstSaid>): string {
  if (!against.known) return sayTooFewTargets(against);
  const { targets, reached, expected, contradicts } = against.value;
  const came = `${reached} of ${counted(targets, "target")} ${reached === 1 ? "was" : "were"} reached, about ${Math.round(expected)} ${Math.round(expected) === 1 ? "was" : "were"} to be expected`;
  switch (contradicts) {
    case "no":
      return `The chances fit what came so far: ${came}.`;
    case "too hopeful":
      return `The chances have been too hopeful for you: ${came}. Take a chance told here for less than it says.`;
    case "too cautious":
      return `The chances have been too cautious for you: ${came}. Take a chance told here for more than it says.`;
  }
}

/** The same in a few words, to stand beside the chances. */
export function sayRecordInShort(against: Figure<RecordAgainstSaid>): string {
  if (!against.known) return "too few came due to judge yet";
  const { targets, reached, contradicts } = against.value;
  const came = `${reached} of ${counted(targets, "target")} reached`;
  return contradicts === "no" ? `${came}, as the chances had it` : `${contradicts} for you: ${came}`;
}

function sayTooFewTargets({ reason }: Extract<Figure<never>, { readonly known: false }>): string {
  if (!("needs" in reason) || reason.has === 0)
    return "No target has come due yet. A chance is judged once its date has passed.";
  const { has, needs } = reason;
  return `Too few to judge the chances yet: ${counted(has, "target")} came due, it takes ${needs}.`;
}

/** How a record is judged that contradicts what was said, for whoever asks. */
export const recordMeaning =
  "Each target with its date counts once here, by the first chance that was told of it: what is said later of the same target hangs together with it. The record is called too hopeful or too cautious where chances that are right would leave one so far off fewer than 1 time in 20.";

/**
 * How near the chances came to what happened: Brier score (mean squared error of the chance) against always saying the share
 * that came true.
 * @example "Better than always saying 8 chances in 20, the share that came true, in 12 forecasts so far: error 0.18 against 0.24.
 * Lower is better, 0 is perfect."
 */
export function sayForecastRecord(
  record: ForecastRecord | undefined,
  against?: Figure<RecordAgainstSaid>,
): string {
  const { count = 0, reached = 0, score = 0, baseScore = 0 } = record ?? {};
  if (count < LEAST_FORECASTS)
    return `${sayTooFew({ needs: LEAST_FORECASTS, of: "forecast that came due", has: count })}.`;
  const error = `error ${score.toFixed(2)}. 0 is perfect; always saying 10 chances in ${TWENTY} makes 0.25.`;
  // With too few targets there is no verdict, and so none here: forecasts of one target hang together.
  if (against?.known === false && "needs" in against.reason)
    return `So far, from ${counted(against.reason.has, "target")}: ${error}`;
  if (baseScore === 0)
    return `${reached === 0 ? "None" : "All"} of ${counted(count, "forecast")} came true so far, so there is nothing to compare them with yet: ${error}`;
  const finding = score === baseScore ? "No better" : score < baseScore ? "Better" : "Worse";
  return `${finding} than always saying ${sayChance(reached / count)}, the share that came true, in ${counted(count, "forecast")} so far: error ${score.toFixed(2)} against ${baseScore.toFixed(2)}. Lower is better, 0 is perfect.`;
}

/**
 * What was said by forecasts of about the same chance, and how often it came true.
 * @example "Said about 13 in 20: 5 of 8 came true"
 */
export function sayFifth({ said, came, count }: RecordFifth): string {
  return `Said about ${Math.round(said * TWENTY)} in ${TWENTY}: ${Math.round(came * count)} of ${count} came true`;
}

/**
 * What became of a forecast.
 * @example "not scored: its date is still to come"
 */
export function sayOutcome(outcome: Figure<boolean>): string {
  if (outcome.known) return outcome.value ? "came true" : "did not come true";
  const { reason } = outcome;
  return "because" in reason && reason.because === "date to come"
    ? "not due yet"
    : `not scored, ${sayLacking(reason)}`;
}

/**
 * What became of all that was said of one target.
 * @example "Reached"
 */
export function sayOutcomes(outcomes: readonly Figure<boolean>[]): string {
  const said = new Set(outcomes.map(sayOutcome));
  if (said.size > 1) {
    const came = outcomes.filter((outcome) => outcome.known && outcome.value).length;
    return `${came} of ${counted(outcomes.length, "forecast")} came true`;
  }
  const [first] = outcomes;
  if (first?.known) return first.value ? "Reached" : "Not reached";
  return asSentence(first === undefined ? "" : sayOutcome(first));
}
