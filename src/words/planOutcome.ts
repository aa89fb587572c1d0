import { formatLapTime } from "#domain";
import type { LineOutcome } from "#stats";
import { hundredths, sayAmount, thousandths } from "./amount.ts";
import { counted } from "./counted.ts";
import { drillWords } from "./planLine.ts";

const met: Readonly<Record<LineOutcome["met"], string>> = {
  good: "Good",
  "not yet": "Not met",
  "too few": "Too few laps to say",
  yours: "Yours to judge",
  skipped: "Left out",
  "to come": "Not driven",
};

/** Whether a line of a plan worked, in one or two words. */
export function sayMet({ met: how }: Pick<LineOutcome, "met">): string {
  return met[how];
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
      return `${value} of ${of ?? 0} ${drill === undefined ? "came off" : drillWords[drill].good}`;
    case "driven":
      return `${value} of ${counted(of ?? 0, "lap")} driven`;
  }
}
