import { formatLapTime, leastForSpread } from "#domain";
import type { RunFinding, RunReport } from "#stats";
import { hundredths, thousandths } from "./amount.ts";
import { clearChangeFromRun } from "./clearChangeFromRun.ts";
import { asSentence, counted } from "./counted.ts";
import { guestRun } from "./guest.ts";
import { sayLapTime } from "./lapTime.ts";
import { isNotCompared, sayLapsToGo, sayTooFew } from "./reason.ts";
import { sayLeast } from "./runFigures.ts";
import { isSame, pace, sayClear, sayNotClear } from "./shift.ts";

/**
 * What one run says, in one sentence that is true for its figures.
 * @param isBeaten its best has been beaten since: a PB that it brought is one no longer
 * @example "1:23.704 is a new PB, 0.313 s faster than the old one. It reaches your target of 1:23.750."
 */
export function sayRun(report: RunReport, isBeaten = false): string {
  return asSentence(sentenceOf(report.finding, report, isBeaten ? "was" : "is"));
}

function sentenceOf(finding: RunFinding, report: RunReport, is: "is" | "was"): string {
  switch (finding.kind) {
    case "guest":
      return guestRun;
    case "no times":
      return finding.driven === 0
        ? "No laps yet."
        : `No clean lap with a time in ${counted(finding.driven, "lap")}.`;
    case "first best":
      return firstBest(finding, is);
    case "new best":
      return newBest(finding, is);
    case "level with best":
      return `${sayLapTime(finding.ms, finding.decimals)} ${is} the same as your PB${finding.decimals < 3 ? ", as far as its digits tell" : ""}.`;
    case "mistakes":
      return `${mistakesOf(finding)}: make the next run slower and clean.`;
    case "target reached":
      return targetReached(finding);
    case "against run before":
      return `${clearChangeFromRun(finding)}.`;
    case "drift": {
      const { msPerLap: estimate, low, high } = finding;
      return `${sayClear({ estimate, low, high }, thousandths, pace, " a lap through the run")}.`;
    }
    case "spread":
      return spread(finding, report);
    case "few":
      return few(finding, report);
  }
}

type Finding<Kind extends RunFinding["kind"]> = Extract<RunFinding, { readonly kind: Kind }>;

/** Where the run's first clean lap was beaten in the run itself, that one was the first. */
function firstBest({ ms, decimals, first, reachedMs }: Finding<"first best">, is: "is" | "was"): string {
  const time = sayLapTime(ms, decimals);
  const reached = bestTargetReached(reachedMs, is);
  if (first === undefined) return `${time} ${is} your first PB here.${reached}`;
  return `${time} ${is} your PB here, ${sayLeast({ ms, decimals }, first)} faster than the first, ${sayLapTime(first.ms, first.decimals)}.${reached}`;
}

/** The gain that is sure whatever the digits that are not known. */
function newBest(
  { ms, decimals, pbMs, pbDecimals, reachedMs }: Finding<"new best">,
  is: "is" | "was",
): string {
  const gain = sayLeast({ ms, decimals }, { ms: pbMs, decimals: pbDecimals });
  return `${sayLapTime(ms, decimals)} ${is} a new PB, ${gain} faster than the old one.${bestTargetReached(reachedMs, is)}`;
}

function bestTargetReached(ms: number | undefined, is: "is" | "was"): string {
  if (ms === undefined) return "";
  return ` It ${is === "is" ? "reaches" : "reached"} your target of ${formatLapTime(ms)}.`;
}

function mistakesOf({ mistakes, flyingLaps }: Finding<"mistakes">): string {
  return mistakes > flyingLaps
    ? `${mistakes} mistakes in ${counted(flyingLaps, "lap")}`
    : `${mistakes} of ${counted(flyingLaps, "lap")} were lost or had a mistake`;
}

function targetReached({ reached, laps, targetMs }: Finding<"target reached">): string {
  const target = `the target of ${formatLapTime(targetMs)}`;
  return laps === 0
    ? `your usual lap reached ${target}.`
    : `your usual lap reached ${target}, with ${reached} of ${counted(laps, "lap")} at it or under.`;
}

function spread(finding: Finding<"spread">, { againstRunBefore }: RunReport): string {
  const scatter = `laps differ by about ${hundredths.say(finding.scatterMs)}, in ${counted(finding.laps, "lap")}.`;
  if (!againstRunBefore.known) return scatter;
  const { n, low, high } = againstRunBefore.value;
  return `${isSame({ low, high }) ? `the same as run ${n}` : sayNotClear(pace, ` than run ${n}`)}; ${scatter}`;
}

function few({ laps, bestMs, decimals }: Finding<"few">, { scatter, againstRunBefore }: RunReport): string {
  const best = `best ${sayLapTime(bestMs, decimals)}`;
  if (laps === 0) return `${best}; write laps down to see more.`;
  if (isNotCompared(againstRunBefore))
    return `${laps === 1 ? best : `${best} of ${counted(laps, "lap")}`}. ${sayTooFew(againstRunBefore.reason)}.`;
  if (laps < leastForSpread) return `${best}. ${asSentence(sayLapsToGo(laps, leastForSpread))}.`;
  const why = scatter.known ? "" : ` ${sayTooFew(scatter.reason)}.`;
  return `${best} of ${counted(laps, "lap")}.${why}`;
}
