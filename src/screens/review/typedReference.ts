import type { FormReading } from "#domain";
import { readTime } from "#entry";

/** A reference lap as it is being typed. */
export interface TypedReference {
  readonly comboId: string;
  readonly time: string;
  readonly source: string;
}

/** A reference lap as it would be stored. */
export interface ReadReference {
  readonly ms: number;
  readonly decimals: number;
  readonly source: string;
}

const longestSource = 200;

/** Reads what was typed: the reference lap, or what is wrong in which field. */
export function readReference(
  typed: TypedReference,
  displayDecimals: number,
): FormReading<ReadReference, "time" | "source"> {
  const time = readTime(typed.time, { displayDecimals });
  const source = typed.source.trim();
  const problems = {
    ...(!time.ok && { time: time.problem }),
    ...(source === "" && {
      source: {
        wrong: "Nothing says where the time comes from.",
        right: "Write who drove it, or where it was shown.",
      },
    }),
    ...(source.length > longestSource && {
      source: { wrong: `This is ${source.length} signs long.`, right: `Write at most ${longestSource}.` },
    }),
  };
  if (!time.ok || problems.source !== undefined) return { ok: false, problems };
  return { ok: true, value: { ms: time.ms, decimals: time.decimals, source } };
}
