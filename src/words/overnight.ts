import type { ComboReview } from "#stats";
import { hundredths } from "./amount.ts";
import { sayTooFew } from "./reason.ts";
import { isClear, isSame, pace, sayBetween, sayClear, sayNotClear } from "./shift.ts";

type Reviewed = Pick<ComboReview, "overnight">;

const beside = " than the one before ended";

/**
 * What stays overnight: how an evening begins against how the one before ended.
 * @example "An evening begins slower by 0.21 s than the one before ended, very likely at least 0.10 s"
 * @example "An evening begins not clearly faster or slower than the one before ended"
 */
export function overnightTitle({ overnight }: Reviewed): string {
  if (!overnight.known) return `What stays overnight: ${sayTooFew(overnight.reason)}`;
  if (isSame(overnight.value)) return "An evening begins as the one before ended";
  return isClear(overnight.value)
    ? `An evening begins ${sayClear(overnight.value, hundredths, pace, beside)}`
    : `An evening begins ${sayNotClear(pace, beside)}`;
}

/** What it is of, how sure it is, and what to do about it. */
export function overnightReading({ overnight }: Reviewed): string {
  if (!overnight.known)
    return "The first laps of an evening beside the last ones of the evening before tell what was learnt from what was only warm.";
  const { low, high, pairs } = overnight.value;
  const range = isSame({ low, high }) ? "" : `: ${sayBetween({ low, high }, hundredths, pace)}`;
  return `The first five pace laps beside the last five of the evening before, ${pairs} times on this page, whatever the period${range}. ${whatToDo(low, high)}`;
}

function whatToDo(low: number, high: number): string {
  if (low > 0)
    return "Part of what an evening brings is warming up: begin with more laps that do not count, and judge what is new by how the next evening begins.";
  if (high < 0)
    return "What an evening brought is there on the next, and more: what was learnt by then, or fresh laps. These figures cannot tell which.";
  return "Judge what is new by how the next evening begins.";
}
