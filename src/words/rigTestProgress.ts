import type { RunOfTest } from "#domain";
import type { RunAside, TestPair, TestPlace, TestProgress, WhyAside } from "#stats";
import { counted } from "./counted.ts";
import { sayReason } from "./reason.ts";
import { type SaidSides, saySide } from "./rigTestSides.ts";

/** Said wherever a figure would stand while a test lasts. */
export const toldWhenOver = "Told when the test is over.";

/** Why no verdict is told of a run of a test: the same on every screen. */
export const testRunSays = "A run of a rig test is compared with nothing while the test lasts.";

/** What comes before the next run of a test. */
export const putItOn = "Put the setting on, then say that it is on.";

/** What comes after the last run of a test. */
export const lookAtTest = "Every pair of the rig test is driven: look at what it found.";

/** What Log does about a test while a session of its combo is open. */
export const driveOnLog = "Log says which setting is next, and asks whether it is on.";

/** The same where none is open: "Start a session with Varnholt Ring · club hatch there. Log then says which setting is next…" */
export function sayWhereToDrive(comboName: string): string {
  return `Start a session with ${comboName} there: Log then says which setting is next, and asks whether it is on.`;
}

/** Reasons for which a run is most often void. */
export const voidReasons = ["wrong setting on", "interrupted", "mistakes", "track changed"] as const;

/** A run of a test among the other runs: "rig test, pair 3, B", "rig test, pair 3, B, void: interrupted" */
export function sayTestPlace({ pair, side, void: why }: Omit<RunOfTest, "id">): string {
  return ["rig test", `pair ${pair}`, side, ...(why === undefined ? [] : [`void: ${why}`])].join(", ");
}

/**
 * With which setting a run of a test was driven, whatever record of the rig was in force.
 * @param sides undefined where the test is not in the logbook
 * @example "Driven with B, gain 48 %, of the rig test: pair 3."
 */
export function sayRunOfTest(
  { pair, side, void: why }: Omit<RunOfTest, "id">,
  sides: SaidSides | undefined,
): string {
  const place = `pair ${pair}${why === undefined ? "" : `, void: ${why}`}`;
  if (sides === undefined)
    return `Driven with setting ${side} of a rig test that is not in the logbook: ${place}.`;
  return `Driven with ${saySide(sides, side)}, of the rig test: ${place}.`;
}

/** "pair 3 of 8" */
export function sayPair(
  { pair }: Pick<TestPlace, "pair">,
  { planned }: Pick<TestProgress, "planned">,
): string {
  return `pair ${pair} of ${planned}`;
}

/**
 * What is to be driven next.
 * @example "Rig test: pair 3 of 8. Next run: B, gain 54 %."
 */
export function sayNextTestRun(progress: TestProgress, sides: SaidSides): string {
  const { next } = progress;
  if (next === undefined) return "Rig test: every pair is driven.";
  return `Rig test: ${sayPair(next, progress)}. Next run: ${saySide(sides, next.side)}.`;
}

/** While a run of practice is being driven: "Rig test: pair 3 of 8 comes after this run." */
export function sayTestAfter(next: Pick<TestPlace, "pair">, progress: Pick<TestProgress, "planned">): string {
  return `Rig test: ${sayPair(next, progress)} comes after this run.`;
}

/** The test waits for another evening. */
export const testPutOff = "Rig test put off tonight.";

/** The same behind a word that says it is next: "B, gain 54 %, for pair 3 of 8 of the rig test." */
export function sayTestRunToCome(progress: TestProgress, sides: SaidSides): string {
  const { next } = progress;
  if (next === undefined) return "every pair is driven.";
  return `${saySide(sides, next.side)}, for ${sayPair(next, progress)} of the rig test.`;
}

/**
 * How far the run of a test is.
 * @example "Run with B, gain 54 %: 4 of 6 laps"
 */
export function sayTestRun(side: "A" | "B", sides: SaidSides, laps: number, planned: number): string {
  return `Run with ${saySide(sides, side)}: ${laps} of ${counted(planned, "lap")}`;
}

/** The same where there is room for a line: "B, gain 54 %: 4 of 6" */
export function sayTestRunInShort(side: "A" | "B", sides: SaidSides, laps: number, planned: number): string {
  return `${saySide(sides, side)}: ${laps} of ${planned}`;
}

/** "3 of 8 pairs driven" */
export function sayPairsDriven({ complete, planned }: Pick<TestProgress, "complete" | "planned">): string {
  return `${complete} of ${counted(planned, "pair")} driven`;
}

/**
 * A pair as it is read out.
 * @example "Pair 3: B driven, A next"
 */
export function sayPairMark({ n, first, a, b }: TestPair, next: TestPlace | undefined): string {
  const sideSays = (side: "A" | "B") => {
    if ((side === "A" ? a : b) !== undefined) return `${side} driven`;
    return next?.pair === n && next.side === side ? `${side} next` : `${side} to come`;
  };
  return `Pair ${n}: ${sideSays(first)}, ${sideSays(first === "A" ? "B" : "A")}`;
}

/** That a pair begins anew, where one half of it was driven on another evening; empty where none was. */
export function sayBegunAnew({ next, voided }: TestProgress): string {
  const isAnew =
    next?.isFirst === true && voided.some(({ pair, why }) => pair === next.pair && why.because === "alone");
  return isAnew ? "This pair begins anew: both its runs belong into one evening." : "";
}

/** Why a run of a test does not count: "void: wrong setting on" */
export function sayWhyAside({ why }: Pick<RunAside, "why">): string {
  switch (why.because) {
    case "void":
      return `void: ${why.words}`;
    case "alone":
      return "the other run of its pair was not driven that evening";
    case "second first":
      return "driven before the run its pair begins with";
    case "again":
      return "its place in the pair was filled already";
    case "not planned":
      return "the test has no such pair";
    case "figure":
      return sayReason(why.reason);
  }
}

/** The same of the run that is being driven: "This run does not count: race laps are not compared with practice." */
export function sayDoesNotCount(why: WhyAside): string {
  return `This run does not count: ${sayWhyAside({ why })}.`;
}

/** What stopping now does to what the test can say. */
export function sayStopEarly({ complete, planned }: Pick<TestProgress, "complete" | "planned">): string {
  const so = `After ${complete} of ${counted(planned, "pair")}`;
  const forGood = "It cannot go on afterwards.";
  if (complete < 3) return `${so} nothing can be told: the test ends without an answer. ${forGood}`;
  return `${so} the test gives an estimate and no verdict: a test that is stopped when one likes finds a difference between equal settings twice as often. ${forGood}`;
}

/**
 * Where the value that a test is about is changed while it lasts.
 * @example "A rig test of gain 72 % against gain 54 % is under way: put A back on for its runs with A, or stop it."
 */
export function sayPutBackOn({ sayA, sayB }: SaidSides): string {
  return `A rig test of ${sayA} against ${sayB} is under way: put A back on for its runs with A, or stop it.`;
}

/** The same on the test's page, once it is changed: "The record in force is not A: put gain 72 % on for the runs with A, or stop the test." */
export function sayNotInForce({ sayA }: SaidSides): string {
  return `The record in force is not A: put ${sayA} on for the runs with A, or stop the test.`;
}
