import type { AccountChange, ChangedLine, ComboReview } from "#stats";
import { accountLineNames } from "./account.ts";
import { hundredths, sayAmount } from "./amount.ts";
import { counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { isClear, pace } from "./shift.ts";
import { saySigned } from "./signed.ts";

type Changed = Pick<ComboReview, "accountChange">;

/**
 * What became of the mean lap since the period before, and which line did most of it.
 * @param before the period before in words: "the 4 weeks before"
 * @example "Mean lap faster by 0.33 s than in the 4 weeks before; pace moved most: −0.62 s, very likely"
 */
export function accountChangeTitle({ accountChange }: Changed, before: string): string {
  if (!accountChange.known) return sayTooFew(accountChange.reason);
  const { change } = accountChange.value;
  const largest = mostMoved(accountChange.value);
  const whole =
    change === 0
      ? `Mean lap the same as in ${before}`
      : `Mean lap ${change < 0 ? pace.fall : pace.rise} by ${sayAmount(change, hundredths)} than in ${before}`;
  if (largest.ms === 0) return whole;
  return `${whole}; ${accountLineNames[largest.line]} moved most: ${saySigned(largest.ms, hundredths)}, ${sureness(largest)}`;
}

/** From what it is worked out, and what its lines are worth. */
export function accountChangeReading({ accountChange }: Changed): string {
  if (!accountChange.known) return "Both periods need a session with five pace laps.";
  const { laps, lapsBefore, lines } = accountChange.value;
  const unsure = lines.filter((line) => line.ms !== 0 && sureness(line) !== "very likely");
  const from = `From ${counted(laps, "lap")} now and ${lapsBefore} before, each period against the same lap. The mean lap holds mistakes and traffic, which the usual lap does not.`;
  if (unsure.length === 0) return `${from} Each line that moved very likely did.`;
  const names = unsure.map(({ line }) => accountLineNames[line]).join(", ");
  return `${from} May be chance: ${names}.`;
}

/** The line that moved most, whichever way. */
export function mostMoved({ lines }: AccountChange): ChangedLine {
  return lines.reduce((most, line) => (Math.abs(line.ms) > Math.abs(most.ms) ? line : most));
}

/** A line that moved one way in the sum and another from session to session is not sure. */
function sureness({ ms, shift }: ChangedLine): "very likely" | "may be chance" {
  const agrees = shift.known && isClear(shift.value) && Math.sign(shift.value.estimate) === Math.sign(ms);
  return agrees ? "very likely" : "may be chance";
}
