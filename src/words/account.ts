import type { AccountTarget } from "#combo";
import { type Figure, formatLapTime, type Reason, remarksNamed } from "#domain";
import { largestLine, type OddPart, type TimeAccount } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { asSentence, counted, listed } from "./counted.ts";
import { sayReason, sayTooFew } from "./reason.ts";
import { saySigned } from "./signed.ts";

/** A line of the time account. */
export type AccountLineName = "pace" | "repeatability" | "mistakes" | "others";

const lines: readonly AccountLineName[] = ["pace", "repeatability", "mistakes", "others"];

export const accountLineNames: Readonly<Record<AccountLineName, string>> = {
  pace: "pace",
  repeatability: "uneven laps",
  mistakes: "mistakes",
  others: "others on track",
};

/** What each line means. */
export const accountLineMeanings: Readonly<Record<AccountLineName, string>> = {
  pace: "from the target to your best laps (the mean best of ten, or of all where there are fewer)",
  repeatability: "from your best laps to the mean of your laps without a mistake",
  mistakes: `what laps with ${remarksNamed("mistake")} add to the mean`,
  others: `what laps with ${remarksNamed("others")} add to the mean`,
};

/** What is measured against where each session has a time of its own. */
const ownTimes = "the times it is measured against";

const targetWords: Readonly<Record<AccountTarget["from"], string>> = {
  session: "the session's target",
  target: "the target nearest in date",
  reference: "the reference lap",
  pb: "the PB before the session",
};

/** What laps are measured against in a word or two, where the time itself stands beside it. */
export function sayMeasuredBy(target: AccountTarget | undefined): string {
  if (target === undefined) return "what each session is measured against";
  return target.from === "target" ? "the target" : targetWords[target.from];
}

/**
 * Why there is no time account of a session, and what would bring one.
 * @example "Where the time went cannot be told yet: needs 5 pace laps, has 3."
 */
export function sayNoAccount(reason: Reason): string {
  return "because" in reason && reason.because === "nothing to measure a session against"
    ? "Where the time went can be told against a target, a reference lap or a PB from an earlier session. Your next session here has today's PB."
    : `Where the time went cannot be told yet: ${sayReason(reason)}.`;
}

/** A time account, and what it is measured against where that is one time. */
export interface AccountReport {
  readonly account: Figure<TimeAccount>;
  readonly target?: AccountTarget | undefined;
}

/**
 * What a time account finds: the largest line and the mean lap's distance to the target, or the laps confirmed as odd
 * that make the largest line.
 * @example "Uneven laps cost most: 0.56 of the 1.01 s to your target"
 * @example "Uneven laps cost 0.17 s a lap; pace wins most of it back"
 * @example "One lap of 25:00.000 adds 2:21.56 a lap to mistakes"
 */
export function accountTitle({ account, target }: AccountReport): string {
  if (!account.known) return sayTooFew(account.reason);
  const { balance } = account.value;
  const whole = sayAmount(balance, hundredths);
  if (balance <= 0) {
    const what = target === undefined ? ownTimes : targetWords[target.from];
    return balance === 0 ? `Mean lap the same as ${what}` : `Mean lap ${whole} faster than ${what}`;
  }
  const odd = oddInTitle(account.value);
  if (odd !== undefined) return oddWords(odd);
  const largest = largestOf(account.value);
  const [name, cost] = [asSentence(accountLineNames[largest]), account.value[largest]];
  const helper = lines.reduce((best, line) => (account.value[line] < account.value[best] ? line : best));
  const verb = largest === "pace" ? "costs" : "cost";
  if (account.value[helper] >= 0)
    return `${name} ${verb} most: ${hundredths.digits(cost)} of ${wholeWay(whole, target)}`;
  const most = -account.value[helper] * 2 > cost ? "most" : "some";
  return `${name} ${verb} ${hundredths.say(cost)} a lap; ${helpers[helper]} ${most} of it back`;
}

/** A line that wins time, as it stands before "most of it back". */
const helpers: Readonly<Record<AccountLineName, string>> = {
  pace: "good pace wins",
  repeatability: "even laps win",
  mistakes: "laps with a mistake win",
  others: "others on track win",
};

/** The whole distance, and to what where that is one time. */
function wholeWay(whole: string, target: AccountTarget | undefined): string {
  if (target === undefined) return `${whole} a lap`;
  return `the ${whole} to ${target.from === "target" ? "your target" : sayMeasuredBy(target)}`;
}

/** The laps confirmed as odd that make most of the largest line. */
function oddInTitle(account: TimeAccount): OddPart | undefined {
  if (account.balance <= 0) return undefined;
  return account.odd?.parts.find(({ line }) => line === largestOf(account));
}

function oddWords({ laps, slowest, perLap, line }: OddPart): string {
  const time = formatLapTime(slowest);
  const who = laps === 1 ? `One lap of ${time} adds` : `${laps} laps of up to ${time} add`;
  return `${who} ${sayAmount(perLap, hundredths)} a lap to ${accountLineNames[line]}`;
}

/** The line with the greatest loss, whoever's it is. */
function largestOf(account: TimeAccount): AccountLineName {
  return lines.reduce((best, line) => (account[line] > account[best] ? line : best));
}

/**
 * How to read a time account: against what, from how many laps, what to work on, and what is counted beside it.
 * @example "Against the PB before the session, 1:23.704, from 31 laps of pace runs; 2 cut laps stay out."
 */
export function accountReading({ account, target }: AccountReport): string {
  if (!account.known) return `${sayTooFew(account.reason)}.`;
  const { value } = account;
  const against =
    target === undefined
      ? "Each session against its own target, reference lap or PB"
      : `Against ${targetWords[target.from]}, ${formatLapTime(target.ms)}`;
  const sessions = value.sessions > 1 ? ` in ${counted(value.sessions, "session")}` : "";
  const from = `${against}, from ${counted(value.laps, "lap")} of pace runs${sessions}`;
  return `${from}: the mean lap, mistakes included, is at ${saySigned(value.balance, hundredths)}.${workOnWords(value)}${leftOut(value)}`;
}

function workOnWords(account: TimeAccount): string {
  const inTitle = oddInTitle(account);
  const odd = (account.odd?.parts ?? [])
    .filter((part) => part !== inTitle)
    .map((part) => ` ${oddWords(part)}.`)
    .join("");
  const aside = account.odd === undefined ? "" : ", laps confirmed as odd left aside";
  if (account.odd !== undefined && account.odd.without === undefined)
    return `${odd} Too few pace laps are left without it to say what to work on.`;
  const largest = largestLine(account);
  if (largest === undefined) return `${odd} Nothing of yours costs time against it${aside}.`;
  const { line, ms } = largest;
  return `${odd} To work on${aside}: ${accountLineNames[line]}, ${sayAmount(ms, hundredths)} a lap.`;
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
