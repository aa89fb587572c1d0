import { type Figure, known, type Reason, unknown } from "#domain";
import { periodShift } from "../period/periodShift.ts";
import type { Shift } from "../period/shift.ts";
import type { LapInAccount } from "./accountSteps.ts";
import { accountsOfLaps, type TimeAccount } from "./timeAccount.ts";

/** The lines of a time account. */
export const accountLines = ["pace", "repeatability", "mistakes", "others"] as const;
export type AccountLineKey = (typeof accountLines)[number];

/** What became of one line, ms a lap; the shift between sessions where there are enough of them. */
export interface ChangedLine {
  readonly line: AccountLineKey;
  readonly ms: number;
  readonly shift: Figure<Shift>;
}

/** The mean lap of the period before, of this one, and what each line did: before + lines = now, to the ms. */
export interface AccountChange {
  readonly before: number;
  readonly lines: readonly ChangedLine[];
  readonly now: number;
  readonly change: number;
  readonly laps: number;
  readonly lapsBefore: number;
}

type Sessions = readonly (readonly LapInAccount[])[];

/**
 * The time accounts of two periods laid side by side, both against the same lap, so that moving targets move nothing.
 * Each account balances to the millisecond, so their difference does too.
 * @param now laps of each session of the period
 * @param before the same for the period before
 * @returns a reason where either has no session with five pace laps
 */
export function accountChange(now: Sessions, before: Sessions): Figure<AccountChange> {
  const [earlier, present] = [accountsOfLaps(before, 0), accountsOfLaps(now, 0)];
  const [there, here] = [earlier.whole, present.whole];
  if (!there.known) return unknown(saidOfBefore(there.reason));
  if (!here.known) return here;
  const valuesOf = (each: readonly Figure<TimeAccount>[]) =>
    each.flatMap((one) => (one.known ? [one.value] : []));
  const [nowValues, beforeValues] = [valuesOf(present.each), valuesOf(earlier.each)];
  const shiftOf = (line: AccountLineKey) => {
    const of = (values: readonly TimeAccount[]) => values.map((account) => account[line]);
    return periodShift(of(nowValues), of(beforeValues));
  };
  return known({
    before: there.value.balance,
    now: here.value.balance,
    change: here.value.balance - there.value.balance,
    lines: accountLines.map((line) => ({
      line,
      ms: here.value[line] - there.value[line],
      shift: shiftOf(line),
    })),
    laps: here.value.laps,
    lapsBefore: there.value.laps,
  });
}

/** Too few laps there are said of the period before. */
function saidOfBefore(reason: Reason): Reason {
  return "needs" in reason ? { ...reason, period: "before" } : reason;
}
