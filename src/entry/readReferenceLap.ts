import { type FormReading, longestSource } from "#domain";
import { readTime } from "./readTime.ts";

/** A reference lap as it is being typed. */
export interface TypedReferenceLap {
  readonly time: string;
  /** Where the time comes from. */
  readonly source: string;
}

/** A reference lap as it would be stored. */
export interface ReadReferenceLap {
  readonly ms: number;
  readonly decimals: number;
  readonly source: string;
}

/**
 * Reads a reference lap: a whole lap time, and where it comes from.
 * @param displayDecimals of the simulator, for a time typed without its point
 * @returns the lap, or what is wrong in which field; never throws
 */
export function readReferenceLap(
  typed: TypedReferenceLap,
  displayDecimals: number,
): FormReading<ReadReferenceLap, keyof TypedReferenceLap> {
  const time = readTime(typed.time, { displayDecimals });
  const source = typed.source.trim();
  const wrongSource = sourceProblem(source);
  if (time.ok && wrongSource === undefined)
    return { ok: true, value: { ms: time.ms, decimals: time.decimals, source } };
  return { ok: false, problems: { time: time.ok ? undefined : time.problem, source: wrongSource } };
}

function sourceProblem(source: string) {
  if (source === "")
    return {
      wrong: "Nothing says where the time comes from.",
      right: "Write who drove it, or where it was shown.",
    };
  if (source.length > longestSource)
    return { wrong: `This is ${source.length} signs long.`, right: `Write at most ${longestSource}.` };
  return undefined;
}
