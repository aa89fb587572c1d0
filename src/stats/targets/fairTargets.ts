import { type Figure, known, unknown } from "#domain";
import { quantileWithin } from "#numbers";
import { needs } from "../sample/needs.ts";
import type { PracticeQuestion } from "../weeks/practiceCurve.ts";
import { type ForecastKind, futureFigures } from "./futureFigures.ts";

/**
 * Targets worth setting: `fair` is reached in 10 of 20 futures by the date, `stretch` in 4 of 20; both whole ms.
 * Read off the best figure of each drawn future (our methods, §6). Where a driver has gone flat they may be slower
 * than the personal best.
 * @returns a reason with fewer than 2 past sessions or without a session to come
 * @throws RangeError for a value that is not finite, naming it
 */
export function fairTargets(
  question: PracticeQuestion & { readonly kind: ForecastKind },
): Figure<{ fair: number; stretch: number }> {
  const futures = futureFigures(question, question.kind);
  if (!futures.known) return futures;
  const { figures } = futures.value;
  const [first] = figures;
  if (first === undefined) return unknown(needs(1, "session to come", 0));
  const fastest = first.map((value, draw) =>
    figures.reduce((least, values) => Math.min(least, values[draw] ?? Infinity), value),
  );
  return known({
    stretch: Math.round(quantileWithin(fastest, 0.2)),
    fair: Math.round(quantileWithin(fastest, 0.5)),
  });
}
