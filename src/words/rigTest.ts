import type { RigTest } from "#domain";
import type { RankTest, RigTestReport } from "#stats";
import { awayFromZero, hundredths, sayAmount, towardsZero } from "./amount.ts";
import { asSentence, counted, lower } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { seldomTheRigs } from "./rigStep.ts";
import { type NamedTest, ofSide, saidSides } from "./rigTestSides.ts";
import {
  type Directions,
  isClear,
  isSame,
  pace,
  type Shift,
  sayBetween,
  sayClear,
  sayNotClear,
} from "./shift.ts";

/** A rig test, or as much of it as its verdict is said with. */
export type SaidTest = NamedTest & Pick<RigTest, "level" | "smallestMs">;

type Judged = RigTestReport["figure"];

const steadiness: Directions = { fall: "steadier", rise: "less steady" };

/** What a smaller and a larger figure are called. */
const directionsOf = (figure: Judged): Directions => (figure === "scatter" ? steadiness : pace);

/** "0.18 s a lap faster", "0.08 s steadier from lap to lap" */
function sayStep(amount: string, way: string, figure: Judged): string {
  return figure === "scatter" ? `${amount} ${way} from lap to lap` : `${amount} a lap ${way}`;
}

/**
 * What a rig test found, in one sentence: which setting was faster and between what bounds the true difference lies, or
 * that none larger than so much was there, or that it is not clear.
 * @param side the setting it is seen from
 * @example
 * "B (gain 54 %) is 0.18 s a lap faster; with 7 pairs the true difference is between 0.05 and 0.31 s, 9 in 10"
 * "No difference of more than 0.20 s: with 8 pairs B (gain 54 %) is between 0.08 s faster and 0.12 s slower, 9 in 10"
 * "Not clearly faster or slower: with 8 pairs B (gain 54 %) is between 0.10 s faster and 0.34 s slower, 9 in 10"
 */
export function sayRigTest(report: RigTestReport, test: SaidTest, side: "A" | "B" = "B"): string {
  const { verdict, figure, complete } = report;
  if (!verdict.known) return sayTooFew(verdict.reason);
  const shift = shiftOf(verdict.value, side);
  if (isSame(shift)) return "No difference";
  const { sayA, sayB } = saidSides(test);
  const who = `${side} (${ofSide(side, sayA, sayB)})`;
  const words = directionsOf(figure);
  const [pairs, sure] = [`with ${counted(complete, "pair")}`, saySure(test.level)];
  const between = `${pairs} ${who} is ${sayBetween(shift, hundredths, words)}, ${sure}`;
  if (isClear(shift)) {
    const step = sayStep(sayAmount(shift.estimate, hundredths), wayOf(shift, words), figure);
    const said = `${who} is ${step}; ${pairs} the true difference is ${sayBounds(shift)}, ${sure}`;
    if (report.isOver && report.isQuestioned) return `${said}; ${seldomTheRigs}`;
    return isTooSmall(shift, test) ? `${said}: less than the ${saySmallest(test)} that would matter` : said;
  }
  if (isTooSmall(shift, test)) return `No difference of more than ${saySmallest(test)}: ${between}`;
  return `${asSentence(sayNotClear(words))}: ${between}`;
}

/**
 * The same as the answer about a record that stands for one of the settings.
 * @example "Faster by 0.21 s, very likely at least 0.11 s"
 * @example "Not clearly faster or slower: between 0.10 s faster and 0.14 s slower"
 */
export function sayTestOfSide(report: RigTestReport, side: "A" | "B"): string {
  const { verdict, figure } = report;
  if (!verdict.known) return sayTooFew(verdict.reason);
  const shift = shiftOf(verdict.value, side);
  const words = directionsOf(figure);
  if (isSame(shift)) return "No difference";
  if (!isClear(shift)) return `${asSentence(sayNotClear(words))}: ${sayBetween(shift, hundredths, words)}`;
  const said = asSentence(sayClear(shift, hundredths, words));
  return report.isOver && report.isQuestioned ? `${said}; ${seldomTheRigs}` : said;
}

/**
 * The same in a line of a list, the settings by their names alone.
 * @example "Gain 54 % is 0.18 s a lap faster than gain 72 %"
 */
export function sayTestInShort(report: RigTestReport, test: SaidTest): string {
  const { verdict, figure } = report;
  const { sayA, sayB } = saidSides(test);
  const both = `${asSentence(sayB)} or ${sayA}`;
  if (!verdict.known) return `${both}: ${lower(sayTooFew(verdict.reason))}`;
  const shift = shiftOf(verdict.value, "B");
  const words = directionsOf(figure);
  if (isSame(shift)) return `${both}: no difference`;
  if (isClear(shift)) {
    const [better, other] = shift.high < 0 ? [sayB, sayA] : [sayA, sayB];
    const amount = sayAmount(shift.estimate, hundredths);
    return `${asSentence(better)} is ${sayStep(amount, words.fall, figure)} than ${other}`;
  }
  return `${both}: ${isTooSmall(shift, test) ? `no difference of more than ${saySmallest(test)}` : sayNotClear(words)}`;
}

/** What the record of a setting that was kept notes: "After a rig test: gain 54 % is 0.18 s a lap faster than gain 72 %." */
export function sayKeptNote(report: RigTestReport, test: SaidTest): string {
  return `After a rig test: ${lower(sayTestInShort(report, test))}.`;
}

/** The estimate of a test that gives no verdict: told as one, with what looking early does. Empty without one. */
export function sayTestEstimate(report: RigTestReport, test: SaidTest): string {
  if (!report.isOver || report.verdict.known || report.estimate === undefined) return "";
  const { estimate, figure } = report;
  const words = directionsOf(figure);
  const step = sayStep(
    sayAmount(estimate.estimate, hundredths),
    estimate.estimate < 0 ? words.fall : words.rise,
    figure,
  );
  const said = `B (${saidSides(test).sayB}) was ${step} in these pairs, but it may be chance`;
  const { reason } = report.verdict;
  if ("because" in reason && reason.because === "pairs not here")
    return `${said}. Where the test was not stopped early, runs driven elsewhere are missing here: merge the whole logbook.`;
  return `${said}: stopping when one likes finds differences that are none.`;
}

/**
 * The signed-rank test beside the verdict, which it checks and never replaces.
 * @example "Check by ranks alone (exact signed-rank test): of two equal settings, 2 tests in 100 look as different as these pairs. It agrees."
 */
export function sayTestCheck(report: RigTestReport, test: SaidTest): string {
  if (!report.isOver || report.check === undefined) return "";
  const { check, verdict } = report;
  const often = `of two equal settings, ${sayOften(check)} as different as these pairs`;
  const said = `Check by ranks alone (${check.exact ? "exact " : ""}signed-rank test): ${often}.`;
  if (!verdict.known) return said;
  const finds = check.p <= test.level;
  if (finds === isClear(verdict.value)) return `${said} It agrees.`;
  return `${said} By itself it would ${finds ? "see a difference" : "not decide"}; the verdict is the one fixed before the test.`;
}

function sayOften({ p }: RankTest): string {
  const inHundred = Math.round(p * 100);
  if (inHundred === 0) return "fewer than one test in 100 looks";
  return `${counted(inHundred, "test")} in 100 ${inHundred === 1 ? "looks" : "look"}`;
}

/** What the slope chart shows, in words: "6 of 8 pairs were faster with B" */
export function sayPairsFallen(report: RigTestReport): string {
  if (!report.isOver) return "";
  const fallen = report.pairs.filter(({ difference }) => difference < 0).length;
  const way = directionsOf(report.figure).fall;
  return `Each line is one pair: left its run with A, right its run with B. B was ${way} in ${fallen} of ${counted(report.pairs.length, "pair")}.`;
}

/** The change from the other setting to this one. A test counts B less A. */
export function shiftOf({ estimate, low, high }: Shift, side: "A" | "B"): Shift {
  if (side === "B") return { estimate, low, high };
  return { estimate: -estimate, low: -high, high: -low };
}

const wayOf = ({ low }: Shift, { fall, rise }: Directions) => (low > 0 ? rise : fall);

/** "between 0.05 and 0.31 s", rounded outwards */
function sayBounds({ low, high }: Shift): string {
  const [near, far] = low > 0 ? [low, high] : [high, low];
  const least = towardsZero(near, hundredths);
  const most = hundredths.say(awayFromZero(far, hundredths));
  return least === 0 ? `up to ${most}` : `between ${hundredths.digits(least)} and ${most}`;
}

/** Whether all that the interval leaves is smaller than what would matter. */
function isTooSmall({ low, high }: Shift, { smallestMs }: Pick<SaidTest, "smallestMs">): boolean {
  return smallestMs !== undefined && Math.max(Math.abs(low), Math.abs(high)) <= smallestMs;
}

const saySmallest = ({ smallestMs = 0 }: Pick<SaidTest, "smallestMs">) => hundredths.say(smallestMs);

/** How often such an interval holds the true value: "9 in 10" */
function saySure(level: number): string {
  const inTwenty = Math.round((1 - level) * 20);
  return inTwenty % 2 === 0 ? `${inTwenty / 2} in 10` : `${inTwenty} in 20`;
}
