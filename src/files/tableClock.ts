import type { Reading } from "#domain";

/** A time of day on the clock of the wall. */
export interface Clock {
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
}

const shape = /^(\d{1,2})(?:[:.h](\d{2})(?:[:.](\d{2})(?:[.,]\d{1,9})?)?)?\s*([ap])?(?:\.?m\.?)?$/i;

/** Reads a time of day: 19:05, 19:05:33, 19.05, 19h05, 7:05 pm. */
export function readClock(cell: string): Reading<{ clock: Clock }> {
  const text = cell.trim();
  const [, hours, minutes, seconds = "0", half] = (text.length > 40 ? null : shape.exec(text)) ?? [];
  const isWhole = hours !== undefined && (minutes !== undefined || half !== undefined);
  const typed = Number(hours);
  const hour = half === undefined ? typed : (typed % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  const [minute, second] = [Number(minutes ?? 0), Number(seconds)];
  const isRight =
    hour <= 23 && minute <= 59 && second <= 59 && (half === undefined || (typed >= 1 && typed <= 12));
  if (isWhole && isRight) return { ok: true, clock: { hour, minute, second } };
  const shown = text.length <= 40 ? text : `${text.slice(0, 40)}…`;
  return {
    ok: false,
    problem: {
      at: 0,
      length: text.length,
      wrong: `“${shown}” is no time of day.`,
      right: "Write it as 19:05 or 7:05 pm.",
    },
  };
}
