import type { Factor, FactorDifference, FactorGroups } from "#stats";
import { hundredths } from "./amount.ts";
import { asSentence, counted, listed } from "./counted.ts";
import { isClear, isSame, pace, sayBetween, sayClear, sayNotClear } from "./shift.ts";

export const factorNames: Readonly<Record<Factor, string>> = {
  effort: "effort",
  surface: "surface",
  tyres: "tyres",
  setup: "set-up",
  focus: "focus",
};

/** A value of a factor beside the most driven one. */
export interface ToldDifference {
  readonly factor: Factor;
  readonly value: string;
  readonly usual: string;
  readonly difference: FactorDifference;
}

/** The differences that could be worked out, the clear ones first, then by size. */
export function toldDifferences(all: readonly FactorGroups[]): ToldDifference[] {
  const told = all.flatMap(({ factor, groups }) =>
    groups.flatMap(({ value, difference }): ToldDifference[] =>
      difference.known
        ? [{ factor, value, usual: groups[0]?.value ?? "", difference: difference.value }]
        : [],
    ),
  );
  const rank = ({ difference }: ToldDifference) =>
    (isClear(difference) ? 1e9 : 0) + Math.abs(difference.estimate);
  return told.toSorted((a, b) => rank(b) - rank(a));
}

/**
 * One difference with its interval and what it rests on.
 * @example "wet against dry: slower by 8.90 s, very likely at least 8.10 s, in the same 6 sessions"
 */
export function sayDifference({ value, usual, difference }: ToldDifference): string {
  const found = isClear(difference)
    ? sayClear(difference, hundredths, pace)
    : isSame(difference)
      ? "no difference"
      : `${sayNotClear(pace)}, ${sayBetween(difference, hundredths, pace)}`;
  const where =
    difference.basis === "same sessions"
      ? `in the same ${counted(difference.sessions, "session")}`
      : `over ${counted(difference.sessions, "session")}, each against your level at the time`;
  return `${value} against ${usual}: ${found}, ${where}`;
}

/** What the chart of differences finds. */
export function factorsTitle(all: readonly FactorGroups[]): string {
  const told = toldDifferences(all);
  const first = told[0];
  if (first === undefined) {
    const varied = all.filter(({ groups }) => groups.length > 1).map(({ factor }) => factorNames[factor]);
    return varied.length === 0
      ? "Everything noted stayed the same"
      : `Too few sessions to compare by ${listed(varied)}`;
  }
  if (isClear(first.difference)) {
    const { value, usual, difference } = first;
    return `With ${value} ${sayClear(difference, hundredths, pace)}, against ${usual}`;
  }
  const names = [...new Set(told.map(({ factor }) => factorNames[factor]))];
  return `${asSentence(sayNotClear(pace))} by ${listed(names)}`;
}

const needed = "A comparison needs 4 sessions with 3 clean laps of each, or 5 sessions with both.";

/** What such a comparison is worth, and what one needs where any is missing. */
export function factorsReading(all: readonly FactorGroups[]): string {
  const told = toldDifferences(all).length;
  if (told === 0) return needed;
  const worth =
    "Not a test: you chose when to drive what, and other things changed too. Where two were never driven in the same sessions, each is measured against your level at the time.";
  const compared = all.reduce((sum, { groups }) => sum + Math.max(0, groups.length - 1), 0);
  return told < compared ? `${worth} ${needed}` : worth;
}
