import { type FormReading, formatLapTime, type RunSummary, runRanges } from "#domain";
import { type ReadTime, readTime, type TimeContext } from "#entry";
import { wholeNumber } from "../laps/numbers.ts";

/** A run written as a whole, as it is typed. */
export interface TypedSummary {
  readonly laps: string;
  readonly best: string;
  readonly usual: string;
  readonly off: string;
}

/** A run written as a whole, as it was read. */
export interface ReadSummary {
  readonly laps: number;
  readonly best: ReadTime | undefined;
  readonly usual: ReadTime | undefined;
  readonly off: number | undefined;
}

/** The fields of a summary as they were, or would be, typed. */
export function typedFrom({
  laps,
  bestMs,
  bestDecimals,
  usualMs,
  usualDecimals,
  off,
}: Partial<RunSummary> = {}): TypedSummary {
  return {
    laps: laps === undefined ? "" : String(laps),
    best: bestMs === undefined ? "" : formatLapTime(bestMs, bestDecimals),
    usual: usualMs === undefined ? "" : formatLapTime(usualMs, usualDecimals),
    off: off === undefined ? "" : String(off),
  };
}

/** Reads a summary: the run, or what is wrong in which field. */
export function readSummary(
  typed: TypedSummary,
  near: TimeContext,
): FormReading<ReadSummary, keyof TypedSummary> {
  const counted = wholeNumber(typed.laps, "Laps driven", runRanges.laps.most);
  const offs = wholeNumber(typed.off, "Laps with an off or a spin", runRanges.laps.most);
  const best = typed.best.trim() === "" ? undefined : readTime(typed.best, near);
  const usual = typed.usual.trim() === "" ? undefined : readTime(typed.usual, near);
  const laps = counted.ok ? (counted.value ?? 0) : 0;
  const problems = {
    laps: counted.ok
      ? laps === 0
        ? "Say how many laps were driven, for example 8."
        : undefined
      : counted.problem,
    best: best?.ok === false ? best.problem : undefined,
    usual:
      usual?.ok === false
        ? usual.problem
        : best?.ok && usual?.ok && usual.ms < best.ms
          ? "The usual lap cannot be faster than the best. Put the two the other way round."
          : undefined,
    off: !offs.ok
      ? offs.problem
      : counted.ok && (offs.value ?? 0) > laps
        ? "There cannot be more laps off than laps driven."
        : undefined,
  };
  if (Object.values(problems).some(Boolean)) return { ok: false, problems };
  return {
    ok: true,
    value: {
      laps,
      best: best?.ok ? best : undefined,
      usual: usual?.ok ? usual : undefined,
      off: offs.ok ? offs.value : undefined,
    },
  };
}
