import { sayShortDate } from "#domain";
import type { ComboReview } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import type { KnownOn } from "./gain.ts";
import { pace } from "./shift.ts";

/**
 * What one evening tells: whether the last one was one like others, and how small a change is not worth talking about; empty
 * while the level is little more than a guess.
 * @example "28 Nov was an evening like others: 0.12 s slower than your level, and a single one is usually up to 0.25 s off it."
 */
export function sayOneEvening(
  { curve, history }: Pick<ComboReview, "curve" | "history">,
  { today }: Pick<KnownOn, "today">,
): string {
  const last = history.at(-1);
  if (!curve.known || curve.value.isMostlyAssumption || last === undefined) return "";
  const { now, typicalError, worthwhile } = curve.value;
  const off = last.medianMs - now.mid;
  const isLikeOthers = Math.abs(off) <= typicalError;
  const distance =
    Math.round(Math.abs(off)) === 0
      ? "as fast as your level"
      : `${sayAmount(off, hundredths)} ${off < 0 ? pace.fall : pace.rise} than your level`;
  const error = sayAmount(typicalError, hundredths);
  const day = sayShortDate(last.date, today);
  const told = isLikeOthers
    ? `${day} was an evening like others: ${distance}, and a single one is often ${error} off it.`
    : `${day} was ${distance}, more than the ${error} that a single evening is often off it: look at what was different.`;
  return `${told} Changes of the level under ${sayAmount(worthwhile, hundredths)} are too small to talk about.`;
}
