import { formatLapTime } from "#domain";
import type { EntryContext } from "./context.ts";
import { parseEntry } from "./parseEntry.ts";

/** Something that can be typed, and the lap it would be. */
interface Example {
  /** The fewest digits that would be taken for it; the whole time where none would. */
  readonly typed: string;
  readonly whole: string;
}

/**
 * What the driver may type, from the last lap of this run, else of the session, else from what is usual here. It would be
 * taken for that lap without a question.
 * @returns undefined where no lap is known
 */
export function exampleOf(context: EntryContext): Example | undefined {
  const { runTimes = [], paceTimes, usualMs, displayDecimals } = context;
  const ms = runTimes.at(-1) ?? paceTimes.at(-1) ?? usualMs;
  if (ms === undefined) return undefined;
  const whole = formatLapTime(ms, displayDecimals);
  const digits = whole.replace(/\D/g, "");
  const typed = [1, 2]
    .map((seconds) => digits.slice(-seconds - displayDecimals))
    .find((short) => isTakenFor(short, whole, context));
  return { typed: typed ?? whole, whole };
}

function isTakenFor(typed: string, whole: string, context: EntryContext): boolean {
  const reading = parseEntry(typed, context);
  if (!reading.ok || reading.asks.length > 0) return false;
  return reading.lap.ms !== undefined && formatLapTime(reading.lap.ms, reading.lap.decimals) === whole;
}
