import { formatLapTime, sayDate } from "#domain";
import type { Because, CountedHabit, PlanFacts } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { sayRange } from "./cornersSay.ts";
import { asSentence, counted, inWords } from "./counted.ts";
import { targetFigure } from "./targets.ts";
import { sayUsual } from "./usualLap.ts";

const seconds = (ms: number) => sayAmount(ms, hundredths);
const percent = (share: number) => `${Math.round(share * 100)} %`;

/**
 * Why a line of a plan is there, in the driver's own figures.
 * @example "Over your last six evenings mistakes cost 0.41 s of your 1.02 s a lap: 7 of 60 laps were lost, 4 of them at corner 5."
 */
export function sayWhy(because: Because): string {
  switch (because.because) {
    case "break": {
      const { days, last } = because;
      const back =
        last === undefined
          ? ""
          : ` After your last break of ${counted(last.days, "day")} the old level was back within ${counted(last.laps, "lap")}.`;
      return `${counted(days, "day")} since you drove here.${back}`;
    }
    case "first laps":
      return "The first laps after a rest are slower, and that goes quickly.";
    case "slower overnight":
      return `Your first laps of an evening are about ${seconds(because.ms)} slower than the last of the evening before (${because.pairs} pairs of evenings): more of them before it counts.`;
    case "new here":
      return because.laps === 0
        ? "You have not driven here before."
        : `${counted(because.laps, "lap")} so far: too few to know what costs time here.`;
    case "rig test waits":
      return `A rig test waits: ${counted(because.runs, "run")} still to drive.`;
    case "went well":
      return `It worked last time. Whether it stayed shows at the start of the next evening.`;
    case "not met": {
      const { came } = because;
      return came === undefined
        ? "Not met last time: once more."
        : `Not met last time, ${came.good} of ${came.tries}: once more.`;
    }
    case "mistakes":
      return sayMistakesWhy(because);
    case "corner": {
      const { worth, mistakes, laps, todo } = because;
      const braking = todo.do === "brake" ? ` ${sayBrakingSeen(todo.seen)}` : "";
      const lost =
        mistakes === 0 ? "" : `, with ${counted(mistakes, "mistake")} there in ${counted(laps, "lap")}`;
      return `About ${seconds(worth.mid)} a lap${worth.low === worth.high ? "" : ` (${sayRange(worth)})`}: no other corner is worth more${lost}.${braking}`;
    }
    case "braking":
      return sayBrakingSeen(because.seen);
    case "throttle":
      return sayThrottleSeen(because.seen);
    case "gap":
      return `A replay showed ${because.gap.metres.toFixed(1)} m of road left at the ${because.gap.at}.`;
    case "uneven":
      return `${sayOver(because)} uneven laps cost ${ofAll(because)}.`;
    case "runs differ":
      return `${sayOver(because)} uneven laps cost ${ofAll(because)}, and most of it lies between your runs: ${percent(because.runs)} of the spread, ${percent(because.laps)} inside them.`;
    case "pace":
      return `${sayOver(because)} pace costs ${ofAll(because)}: your best laps are that much slower than ${because.ms < because.balance ? "it" : sayAgainst(because)}.`;
    case "target": {
      const { target, best } = because;
      const far =
        best === undefined
          ? ""
          : ` It is ${seconds(best - target.value)} under your best: too much to ask of one evening.`;
      return `${asSentence(targetFigure(target))} ${formatLapTime(target.value)} is wanted by ${sayDate(target.by)}: ${sayDaysLeft(target)}.${far}`;
    }
    case "see the effect":
      return because.usual === undefined
        ? "Five clean laps at full effort make a usual lap to measure by."
        : `Your usual lap was ${sayUsual(because.usual, 2)}${because.on === undefined ? " when you last had one" : ` on ${sayDate(because.on)}`}; the same run again shows what changed.`;
    case "races":
      return `You raced on ${inWords(because.races)} of your last evenings.`;
  }
}

/** "Braking was late in 2 of 3 reviews." */
export function sayBrakingSeen({ what, count, of }: CountedHabit<"early" | "late">): string {
  return `Braking was ${what} in ${count} of ${counted(of, "review")}.`;
}

/** "Throttle was pressed twice in 2 of 3 reviews." */
export function sayThrottleSeen({ what, count, of }: CountedHabit<"early" | "late" | "twice">): string {
  return `Throttle was ${what === "twice" ? "pressed twice" : what} in ${count} of ${counted(of, "review")}.`;
}

function sayMistakesWhy({
  ms,
  balance,
  against,
  lost,
  laps,
  evenings,
  corner,
}: Extract<Because, { readonly because: "mistakes" }>): string {
  const where =
    corner === undefined
      ? ""
      : `, ${corner.count === lost ? "all" : corner.count} of them at corner ${corner.number}`;
  const count = `${lost} of ${counted(laps, "lap")} were lost${where}`;
  return ms === undefined || balance === undefined || ms === 0
    ? `${sayOver({ evenings })} ${count}.`
    : `${sayOver({ evenings })} mistakes cost ${ofAll({ ms, balance, against })}: ${count}.`;
}

/** The evenings that an account is of: other spans have accounts of their own. */
export function sayOver({ evenings }: { readonly evenings: number }): string {
  return evenings === 1 ? "On your last evening" : `Over your last ${inWords(evenings)} evenings`;
}

/** What all that is lost is measured against, said to the driver. */
const againstWords: Readonly<Record<NonNullable<PlanFacts["against"]>, string>> = {
  session: "your target",
  target: "your target",
  reference: "your reference lap",
  pb: "your PB",
};

function sayAgainst({ against }: Pick<PlanFacts, "against">): string {
  return against === undefined ? "what each evening is measured against" : againstWords[against];
}

/** "21 days left", "today" */
function sayDaysLeft({ days }: { readonly days: number }): string {
  return days === 0 ? "today" : `${counted(days, "day")} left`;
}

interface PartOfAll extends Pick<PlanFacts, "against"> {
  readonly ms: number;
  readonly balance: number;
}

/**
 * A line of the account and all of it; alone where other lines take more off than there is left.
 * @example "0.41 s of the 1.02 s a lap you lose to your PB", "0.41 s a lap"
 */
function ofAll({ ms, balance, against }: PartOfAll): string {
  return ms < balance
    ? `${seconds(ms)} of the ${seconds(balance)} a lap you lose to ${sayAgainst({ against })}`
    : `${seconds(ms)} a lap`;
}
