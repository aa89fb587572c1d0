import type { Figure, TestFigure } from "#domain";
import type { RunDifferences, TestPlan, TestSize } from "#stats";
import { hundredths } from "./amount.ts";
import { asSentence, counted } from "./counted.ts";
import { sayLacking } from "./reason.ts";
import type { SaidSides } from "./rigTestSides.ts";

/** What a test asks, as far as its question is made of it. */
export interface AskedTest extends SaidSides {
  readonly figure: TestFigure;
  /** A value of the rig, or something in words. */
  readonly differs: "value" | "words";
}

/**
 * The question of a test, in plain words.
 * @example "Does gain 54 % instead of gain 72 % make me faster? Varnholt Ring · club hatch"
 * @example "With gloves or without: which is faster? Varnholt Ring · club hatch"
 */
export function askTest({ sayA, sayB, figure, differs }: AskedTest, comboName: string): string {
  const better = figure === "usual" ? "faster" : "steadier";
  if (differs === "words") return `${asSentence(sayB)} or ${sayA}: which is ${better}? ${comboName}`;
  return `Does ${sayB} instead of ${sayA} make me ${better}? ${comboName}`;
}

/** What the title is where the field of the question was emptied. */
export function sayQuestionLeft(suggested: string): string {
  return suggested === "" ? "Left empty, it is made of what differs." : `Left empty, it is: ${suggested}`;
}

/**
 * What a number of pairs means at the wheel.
 * @example "8 pairs of runs: 16 runs of 6 laps, about 4 evenings"
 */
export function sayTestSize({ pairs, runs, evenings }: TestSize, lapsARun: number): string {
  const laps = `${counted(runs, "run")} of ${counted(lapsARun, "lap")}`;
  return `${pairs} ${pairs === 1 ? "pair" : "pairs"} of runs: ${laps}, about ${counted(evenings, "evening")}`;
}

/** What such a test finds: "In 4 such tests of 5 a difference of 0.12 s is found." */
export function sayFoundBy({ foundMs }: TestSize): string {
  if (foundMs === undefined) return "";
  return `In 4 such tests of 5 a true difference of ${hundredths.say(foundMs)} is found; a smaller one more seldom.`;
}

/** Why not fewer: the driver's own runs, and where they are not known what is missing. */
export function sayWhySoMany(spread: Figure<RunDifferences>, figure: TestFigure): string {
  if (!spread.known)
    return `How many pairs it takes cannot be told yet: ${sayLacking(spread.reason)}. Runs of five pace laps one after the other on this combo show it.`;
  const apart = hundredths.say(spread.value.ms);
  return figure === "usual"
    ? `The reason: from one run to the next your usual lap differs by about ${apart} even with nothing changed.`
    : `The reason: from one run to the next your evenness differs by about ${apart} even with nothing changed.`;
}

/**
 * That a test is not worth driving, and what the largest that is would find; empty where it is worth it.
 * @example "Not worth testing: a difference of 0.05 s takes 61 pairs, and more than 24 are too many to drive. With 24 pairs, 10 evenings, you would find 0.16 s."
 */
export function sayNotWorth({ pairs, evenings, verdict }: TestPlan, smallestMs: number): string {
  if (verdict.isWorth) return "";
  const { tooMany, most, instead } = verdict;
  const takes = tooMany === "pairs" ? `${pairs} pairs` : `${pairs} pairs on ${counted(evenings, "evening")}`;
  const limit = tooMany === "pairs" ? `more than ${most}` : `more than ${most} evenings`;
  const found =
    instead.foundMs === undefined
      ? ""
      : ` With ${counted(instead.pairs, "pair")}, ${counted(instead.evenings, "evening")}, you would find ${hundredths.say(instead.foundMs)}.`;
  return `Not worth testing: a difference of ${hundredths.say(smallestMs)} takes ${takes}, and ${limit} are too many to drive for one setting.${found}`;
}
