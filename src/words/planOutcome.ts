import { formatLapTime } from "#domain";
import type { LineOutcome } from "#stats";
import { hundredths, sayAmount, thousandths } from "./amount.ts";
import { asSentence, counted } from "./counted.ts";
import { drillWords } from "./planLine.ts";

const met: Readonly<Record<LineOutcome["met"], string>> = {
  good: "good",
  "not yet": "not met",
  "too few": "too few laps to say",
  yours: "yours to judge",
  skipped: "left out",
  "to come": "not driven",
};

/** Whether a line of a plan worked, in one or two words. */
export function sayMet({ met: how }: Pick<LineOutcome, "met">): string {
  return asSentence(met[how]);
}

/**
 * What a line of a plan came to, in the figure it is told by; empty where there is none.
 * @example "7 of 8 laps clean", "usual lap 1:24.31", "7 of 10 stops at the mark"
 */
export function sayCameTo({ line: { check, sector, corner, drill }, value, of, laps }: LineOutcome): string {
  // Nothing was counted: what is left to tell is that it was driven.
  if (value === undefined || check === undefined || of === 0)
    return laps === 0 ? "" : `${counted(laps, "lap")} driven`;
  switch (check.figure) {
    case "clean":
      return `${value} of ${counted(of ?? laps, "lap")} clean`;
    case "usual":
      return `usual lap ${formatLapTime(value, 2)}`;
    case "best":
      return `best lap ${formatLapTime(value)}`;
    case "scatter":
      return `laps differed by ${sayAmount(value, hundredths)}`;
    case "corner":
      return value === 0
        ? `no mistake at corner ${corner}`
        : `${counted(value, "mistake")} at corner ${corner}`;
    case "sector":
      return `sector ${sector} usually ${sayAmount(value, thousandths)}`;
    case "drill":
      return `${value} of ${of ?? 0} ${drill === undefined ? "worked" : drillWords[drill].good}`;
    case "driven":
      return `${value} of ${counted(of ?? 0, "lap")} driven`;
  }
}

/**
 * How the run of a line went, once it has ended; empty where nobody drove it.
 * @example "Equal laps: good, laps differed by 0.16 s", "Stops at the mark, corner 5: not met, 7 of 10"
 */
export function sayWent(outcome: LineOutcome): string {
  const { line, met: how, value, of = 0 } = outcome;
  if (how === "skipped" || how === "to come") return "";
  // What is counted in a drill is its name.
  const cameTo = line.check?.figure === "drill" && of > 0 ? `${value} of ${of}` : sayCameTo(outcome);
  return `${line.purpose}: ${[met[how], cameTo].filter(Boolean).join(", ")}`;
}
