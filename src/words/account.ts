import type { AccountTarget } from "#combo";
import { type Figure, formatLapTime } from "#domain";
import { largestLine, type TimeAccount } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { counted, listed } from "./counted.ts";
import { saySigned } from "./signed.ts";
import { sayTooFew } from "./tooFew.ts";

/** A line of the time account. */
export type AccountLineName = "pace" | "repeatability" | "mistakes" | "others";

const lines: readonly AccountLineName[] = ["pace", "repeatability", "mistakes", "others"];

export const accountLineNames: Readonly<Record<AccountLineName, string>> = {
  pace: "pace",
  repeatability: "repeatability",
  mistakes: "mistakes",
  others: "others on track",
};

/** What each line means. */
export const accountLineMeanings: Readonly<Record<AccountLineName, string>> = {
  pace: "from the target to your best laps (the mean best of ten, or of all where there are fewer)",
  repeatability: "from your best laps to your mean lap without a mistake",
  mistakes: "what laps with an off, a spin or a contact add to the mean",
  others: "what laps in traffic or a slow zone add to the mean",
};

const targetWords: Readonly<Record<AccountTarget["from"], string>> = {
  session: "the session's target",
  target: "the target nearest in date",
  reference: "the reference lap",
  pb: "the PB before the session",
};

/** A time account, and what it is measured against where that is one time. */
export interface AccountReport {
  readonly account: Figure<TimeAccount>;
  readonly target?: AccountTarget | undefined;
}

/**
 * What a time account finds: the largest line and the mean lap's distance to the target.
 * @example "Mostly repeatability: 0.56 of 1.01 s a lap"
 */
export function accountTitle({ account }: Pick<AccountReport, "account">): string {
  if (!account.known) return sayTooFew(account.reason);
  const { balance } = account.value;
  const whole = sayAmount(balance, hundredths);
  if (balance <= 0) return balance === 0 ? "Mean lap at the target" : `Mean lap ${whole} under the target`;
  const largest = largestOf(account.value);
  const cost = account.value[largest];
  const isMost = cost * 2 > balance;
  const share = lines.some((line) => account.value[line] < 0)
    ? `${hundredths.say(cost)} a lap, ${whole} in all`
    : `${hundredths.digits(cost)} of ${whole} a lap`;
  return `${isMost ? "Mostly" : "Largest part:"} ${accountLineNames[largest]}${isMost ? ":" : ","} ${share}`;
}

/** The line with the greatest loss, whoever's it is. */
function largestOf(account: TimeAccount): AccountLineName {
  return lines.reduce((best, line) => (account[line] > account[best] ? line : best));
}

/**
 * How to read a time account: against what, from how many laps, what to work on, and what is counted beside it.
 * @example "Against the PB before the session, 1:23.704, from 31 laps; 2 cut laps stay out."
 */
export function accountReading({ account, target }: AccountReport): string {
  if (!account.known) return `${sayTooFew(account.reason)}.`;
  const { value } = account;
  const against =
    target === undefined
      ? "Each session against its own target"
      : `Against ${targetWords[target.from]}, ${formatLapTime(target.ms)}`;
  const sessions = value.sessions > 1 ? ` in ${counted(value.sessions, "session")}` : "";
  const from = `${against}, from ${counted(value.laps, "lap")}${sessions}`;
  return `${from}: the mean lap is at ${saySigned(value.balance, hundredths)}.${workOnWords(value)}${leftOut(value)}`;
}

function workOnWords(account: TimeAccount): string {
  const line = largestLine(account);
  if (line === undefined) return " Nothing of yours is lost against it.";
  return ` To work on: ${accountLineNames[line]}, ${sayAmount(account[line], hundredths)} a lap.`;
}

function leftOut({ cutLaps, notBestLaps, withoutTime, sessionsLeftOut }: TimeAccount): string {
  const parts = [
    ...(cutLaps > 0 ? [`${counted(cutLaps, "cut lap")}`] : []),
    ...(notBestLaps > 0 ? [`${counted(notBestLaps, "lap")} marked not a PB`] : []),
    ...(withoutTime > 0 ? [`${counted(withoutTime, "lap")} without a time`] : []),
    ...(sessionsLeftOut > 0 ? [`${counted(sessionsLeftOut, "session")} with too few laps or no target`] : []),
  ];
  return parts.length === 0 ? "" : ` Not in it: ${listed(parts)}.`;
}
