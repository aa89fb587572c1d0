import { type Corner, leastForSpread } from "#domain";
import type { RunReport, SessionReport } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { asSentence, counted } from "./counted.ts";
import { learningEffort } from "./learningEffort.ts";
import { isNotCompared, sayLapsToGo, sayNotCompared, sayTooFew } from "./reason.ts";
import type { NextRun } from "./suggestion.ts";
import { workOnLine } from "./workOnLine.ts";

/** What a suggestion looks at beside the run itself. */
export interface NextRunContext {
  /** The session so far. */
  readonly session: Pick<SessionReport, "account" | "workOn" | "target">;
  /** Corners named in the run's remarks of own mistakes, as often as they were named. */
  readonly cornersOfMistakes: readonly number[];
  /** Corners of the layout. */
  readonly corners?: readonly Corner[];
}

const LAPS_OF_A_RUN = 8;
const measured = { reason: "measured on you", advice: "common practice, no source" } as const;

/**
 * One suggestion for the next run with its reason. The first of these that is true: someone else drove; a run of a rig test; two or more
 * mistakes at one corner; an untidy run; a run whose laps do not compare; too few laps to say; uneven laps that lie between
 * the session's runs and not in this one; the largest of repeatability, mistakes and pace in the session's time account;
 * nothing lost.
 */
export function suggestNextRun(report: RunReport, context: NextRunContext): NextRun {
  return (
    afterGuest(report) ??
    nextOfTest(report) ??
    oneCorner(context) ??
    slowerAndClean(report) ??
    paceRunNext(report) ??
    sameAgain(report) ??
    runsApart(report, context) ??
    workOnLine(context.session, LAPS_OF_A_RUN, "in this session", context.corners) ??
    nothingToMeasure(context) ??
    nothingLost(context)
  );
}

function afterGuest({ isGuest }: RunReport): NextRun | undefined {
  if (!isGuest) return undefined;
  return {
    suggestion: "Go on where you left off.",
    reason: "Someone else drove this run.",
    evidence: measured,
    check: "The next run of your own says more.",
  };
}

function nextOfTest({ againstRunBefore }: RunReport): NextRun | undefined {
  if (!isNotCompared(againstRunBefore) || againstRunBefore.reason.run !== "test") return undefined;
  return {
    suggestion: "While the rig test lasts, its next run: Log says with which setting.",
    reason: `${asSentence(sayNotCompared("test"))}.`,
    evidence: { reason: "fair evidence", advice: "common practice, no source" },
    check: `${leastForSpread} clean laps, and it counts.`,
  };
}

function oneCorner({ cornersOfMistakes }: NextRunContext): NextRun | undefined {
  const times = new Map<number, number>();
  for (const corner of cornersOfMistakes) times.set(corner, (times.get(corner) ?? 0) + 1);
  const [worst] = [...times].sort(([a, many], [b, more]) => more - many || a - b);
  if (worst === undefined || worst[1] < 2) return undefined;
  const [corner, named] = worst;
  return {
    suggestion: `${LAPS_OF_A_RUN} laps with corner ${corner} in mind: brake earlier there and keep the rest as it is.`,
    reason: `${named} of this run's mistakes were at corner ${corner}.`,
    evidence: measured,
    check: `No mistake at corner ${corner} in the next run.`,
  };
}

function slowerAndClean({ isUntidy, mistakes, flyingLaps }: RunReport): NextRun | undefined {
  if (!isUntidy) return undefined;
  return {
    suggestion: `${LAPS_OF_A_RUN} laps at ${learningEffort}, all of them clean.`,
    reason: `${counted(mistakes, "mistake")} in ${counted(flyingLaps, "lap")}.`,
    evidence: measured,
    check: `${LAPS_OF_A_RUN - 1} of ${LAPS_OF_A_RUN} laps clean.`,
  };
}

function paceRunNext({ isPace, againstRunBefore, laps }: RunReport): NextRun | undefined {
  if (isPace) return undefined;
  const apart = isNotCompared(againstRunBefore) ? againstRunBefore.reason.run : undefined;
  if (apart === "wet")
    return {
      suggestion: "The same again while the surface stays as it is.",
      reason: `${asSentence(sayNotCompared("wet"))}.`,
      evidence: measured,
      check: "Set the two runs side by side.",
    };
  if (laps < leastForSpread && (apart === undefined || apart === "partly written")) return undefined;
  return {
    suggestion: `A pace run of ${LAPS_OF_A_RUN} laps.`,
    reason: `${apart === undefined ? "These laps are not compared" : asSentence(sayNotCompared(apart))}; a pace run will show the effect.`,
    evidence: { reason: "fair evidence", advice: "common practice, no source" },
    check: "The usual lap of the next run against the pace run before.",
  };
}

function sameAgain({ laps }: RunReport): NextRun | undefined {
  if (laps >= leastForSpread) return undefined;
  return {
    suggestion: `The same again, ${LAPS_OF_A_RUN} laps in a row.`,
    reason: `${asSentence(sayLapsToGo(laps, leastForSpread))}.`,
    evidence: measured,
    check: `${leastForSpread} clean laps are enough for a verdict.`,
  };
}

/** Of what uneven laps cost in the session a run has its share; with less than half of it the runs differ, not their laps. */
const SHARE_OF_A_RUN = 0.5;

/** A session of two even runs at different paces has uneven laps; to drive more evenly would mend nothing. */
function runsApart({ best, usual }: RunReport, { session: { workOn } }: NextRunContext): NextRun | undefined {
  if (workOn?.line !== "repeatability" || !best.known || !usual.known) return undefined;
  const ofRun = usual.value - best.value.ms;
  if (ofRun >= workOn.ms * SHARE_OF_A_RUN) return undefined;
  return {
    suggestion: `${LAPS_OF_A_RUN} laps with fuel, tyres and line as in the session's fastest run.`,
    reason: `Uneven laps cost ${sayAmount(workOn.ms, hundredths)} a lap in this session, but between its runs: in this one the usual lap lies ${sayAmount(ofRun, hundredths)} over the best.`,
    evidence: measured,
    check: "The usual lap of the next run against that of the fastest one.",
  };
}

/** The account says why there is none; here stands what can be done about it. */
function nothingToMeasure({ session: { target } }: NextRunContext): NextRun | undefined {
  if (target !== undefined) return undefined;
  return {
    suggestion: `The same again, ${LAPS_OF_A_RUN} laps in a row.`,
    reason: "The next session here will be measured against today's PB.",
    evidence: measured,
    check: "Set a target for today, or a reference lap, to see where the time goes now.",
  };
}

function nothingLost({ session: { account } }: NextRunContext): NextRun {
  if (account.known && account.value.odd !== undefined && account.value.odd.without === undefined)
    return {
      suggestion: `The same again, ${LAPS_OF_A_RUN} laps in a row.`,
      reason: "Too few pace laps beside those confirmed as odd.",
      evidence: measured,
      check: `${leastForSpread} more clean laps show where the time goes.`,
    };
  return account.known
    ? {
        suggestion: "The same again, or set a faster target.",
        reason: "Nothing of yours costs time against the present one.",
        evidence: measured,
        check: "Three in a row under the present target.",
      }
    : {
        suggestion: `The same again, ${LAPS_OF_A_RUN} laps in a row.`,
        reason: `${sayTooFew(account.reason)}.`,
        evidence: measured,
        check: "More pace laps, and a time to measure against, show where the time goes.",
      };
}
