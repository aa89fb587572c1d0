import { type Corner, cornersOfSector, type PlannedRun } from "#domain";
import { accountLines, type PlanFacts, type PlanRule } from "#stats";
import { accountLineNames } from "./account.ts";
import { hundredths, sayAmount } from "./amount.ts";
import { sayCorners, sayRange } from "./cornersSay.ts";
import { counted, listed } from "./counted.ts";
import type { Evidence, Rests } from "./evidence.ts";
import { isOurAdvice } from "./planLine.ts";
import { sayBrakingSeen, sayOver, sayThrottleSeen } from "./planWhy.ts";
import { pace, sayBetween } from "./shift.ts";
import { spreadShares } from "./spreadSources.ts";
import { sayUsual } from "./usualLap.ts";

const common = "common practice, no source";

/** What the reason of each rule's line and the advice itself rest on. */
export const planEvidence: Readonly<Record<PlanRule, Rests>> = {
  "after a break": { reason: "measured on you", advice: common },
  // Warm-up decrement (Adams 1961): first tries after a rest are worse, and come back fast.
  "warm-up": { reason: "fair evidence", advice: "fair evidence" },
  "learn the layout": { reason: "measured on you", advice: common },
  "rig test": { reason: "measured on you", advice: "fair evidence" },
  // Practice is not learning (Soderstrom & Bjork 2015).
  again: { reason: "measured on you", advice: "fair evidence" },
  mistakes: { reason: "measured on you", advice: common },
  // One weakness at a time, with feedback (Ericsson et al. 1993; Macnamara et al. 2016: it helps, it is not all).
  corner: { reason: "measured on you", advice: "fair evidence" },
  drill: { reason: "measured on you", advice: "worth a try" },
  repeatability: { reason: "measured on you", advice: common },
  "runs alike": { reason: "measured on you", advice: "worth a try" },
  pace: { reason: "measured on you", advice: common },
  // A process goal beside the wanted figure (Williamson et al. 2022).
  target: { reason: "measured on you", advice: "fair evidence" },
  measure: { reason: "measured on you", advice: "fair evidence" },
  race: { reason: "measured on you", advice: common },
};

/** What may be claimed for the advice of each rule, and no more. */
const claims: Readonly<Record<PlanRule, string>> = {
  "after a break": "Drivers begin easy after a break; no test of what it brings is known.",
  "warm-up":
    "First tries after a rest are worse and come back fast, so the first laps are no measure of you.",
  "learn the layout": "Drivers learn a way at 70 to 80 % first; no test of what it brings is known.",
  "rig test":
    "Pairs of runs in an order drawn by lot tell a setting from practice, as trials on one person do.",
  again:
    "What goes well while practising is no sure sign of what was learnt; how the next evening begins is a better one.",
  mistakes:
    "Drivers leave room until the laps are clean, and then take it back; no test of what it brings is known.",
  corner:
    "Work on one weakness, seeing each time how it went, helps; it is not all there is to getting faster.",
  drill:
    "To count one thing and leave the time alone may help: studies do not agree. See what your own counts say.",
  repeatability: "Drivers keep to the same marks to get equal laps; no test of what it brings is known.",
  "runs alike":
    "To set a run up as the fastest one was is a trial of your own: see whether the runs come closer.",
  pace: "Drivers look at a replay from outside to find the road they do not use; no test of what it brings is known.",
  target: "One thing to do for it helps more than a wanted figure alone; that was found in sport.",
  measure:
    "How laps go late in practice says little of what was learnt: usual laps of evenings are compared instead.",
  race: "Drivers practise long runs before a race; no test of what it brings is known.",
};

/** What a class of evidence means. */
const meanings: Readonly<Record<Evidence, string | undefined>> = {
  "measured on you": "timed or counted in your own laps",
  "fair evidence": "found in studies of practice, most of them of other skills",
  "worth a try": "not settled by studies",
  // The class says it.
  [common]: undefined,
};

/** A line's reason, or its advice: the class, and what it rests on. */
export interface PlanRests {
  readonly evidence: Evidence;
  /** "The reason: measured on you, timed or counted in your own laps." */
  readonly title: string;
  /** Whole sentences; empty where no figures are known. */
  readonly says: string;
}

/**
 * What a line of a plan rests on: its reason with the figures behind it as they are now, and its advice with what may be
 * claimed for it.
 * @param facts of the combo now; absent where they are not known
 * @returns nothing where the driver wrote the line
 */
export function planRests(
  line: Pick<PlannedRun, "rule" | "corner" | "sector" | "attendTo">,
  facts?: PlanFacts,
  corners: readonly Corner[] = [],
): readonly PlanRests[] {
  const rule = ruleOf(line);
  if (rule === undefined) return [];
  const { reason, advice } = planEvidence[rule];
  const figures = facts === undefined ? "" : figuresOf(rule, line, facts, corners);
  const of = isNothingMeasured(rule, facts) ? common : figures === "" ? reason : "measured on you";
  // What the driver wants to attend to instead is no advice of ours.
  if (!isOurAdvice(rule, line)) return [{ evidence: of, title: titleOf("The reason", of), says: figures }];
  if (of === advice)
    return [
      { evidence: of, title: titleOf("The reason and the advice", of), says: said(figures, claims[rule]) },
    ];
  return [
    { evidence: of, title: titleOf("The reason", of), says: figures },
    { evidence: advice, title: titleOf("The advice", advice), says: claims[rule] },
  ];
}

/** On a circuit that nobody drove there is nothing of the driver's own to go by. */
function isNothingMeasured(rule: PlanRule, facts: PlanFacts | undefined): boolean {
  return rule === "learn the layout" && facts?.driven.laps === 0;
}

function titleOf(part: string, evidence: Evidence): string {
  return [`${part}: ${evidence}`, meanings[evidence]].filter(Boolean).join(", ").concat(".");
}

function ruleOf({ rule }: Pick<PlannedRun, "rule">): PlanRule | undefined {
  return (Object.keys(planEvidence) as PlanRule[]).find((one) => one === rule);
}

function figuresOf(
  rule: PlanRule,
  line: Pick<PlannedRun, "corner" | "sector">,
  facts: PlanFacts,
  corners: readonly Corner[],
): string {
  switch (rule) {
    case "mistakes":
      return said(sayAccount(facts), sayLost(facts), sayMistakesAt(line, facts));
    case "corner":
    case "drill":
    case "again":
      return said(sayCorner(line, facts), sayMistakesAt(line, facts), sayHabits(line, facts));
    case "repeatability":
      return said(sayAccount(facts), saySector(line, facts, corners));
    case "runs alike":
      return said(sayAccount(facts), saySpread(facts));
    case "pace":
      return said(sayAccount(facts), saySector(line, facts, corners), sayCorner(line, facts));
    case "warm-up":
      return sayOvernight(facts);
    case "measure":
      return facts.usual === undefined ? "" : sayAccount(facts);
    case "target":
      return sayToGo(facts);
    default:
      return "";
  }
}

const said = (...sentences: readonly string[]) => sentences.filter((one) => one !== "").join(" ");
const seconds = (ms: number) => sayAmount(ms, hundredths);

/** All lines of the account, so that the one worked on is seen beside the others. */
function sayAccount(facts: PlanFacts): string {
  const { account } = facts;
  if (account === undefined) return "";
  const lines = accountLines
    .filter((line) => account[line] > 0)
    .toSorted((a, b) => account[b] - account[a])
    .map((line) => `${accountLineNames[line]} ${seconds(account[line])}`);
  return lines.length === 0
    ? ""
    : `${sayOver(facts)}, in ${counted(account.laps, "lap")}, a lap costs: ${listed(lines)}.`;
}

/** How far the next target is from the lap that it is about. */
function sayToGo({ target, best, usual }: PlanFacts): string {
  if (target === undefined || (target.kind !== "best" && target.kind !== "median")) return "";
  const now = target.kind === "best" ? best : usual;
  if (now === undefined) return "";
  const lap = `${target.kind === "best" ? "Your best lap" : "Your last usual lap"} is ${sayUsual(now, target.kind === "best" ? 3 : 2)}`;
  const left = target.days === 0 ? "by today" : `in ${counted(target.days, "day")}`;
  return now <= target.value ? `${lap}.` : `${lap}: ${seconds(now - target.value)} to go ${left}.`;
}

function sayLost({ lost: { laps, lost } }: PlanFacts): string {
  return laps === 0 ? "" : `${lost} of ${counted(laps, "lap")} were lost, those without a time among them.`;
}

function cornerAt({ corner }: Pick<PlannedRun, "corner">, facts: PlanFacts) {
  return facts.corners.find(({ number }) => number === corner);
}

function sayCorner(line: Pick<PlannedRun, "corner">, facts: PlanFacts): string {
  const corner = cornerAt(line, facts);
  if (corner?.worth === undefined) return "";
  const parts = [
    corner.unused !== undefined &&
      corner.unused > 0 &&
      `road left unused ${seconds(corner.unused)} (an estimate)`,
    corner.mistakesMs !== undefined && corner.mistakesMs > 0 && `mistakes ${seconds(corner.mistakesMs)}`,
  ].filter((part) => part !== false);
  const of = parts.length === 0 ? "" : `: ${listed(parts)}`;
  return `Corner ${corner.number} is worth ${sayRange(corner.worth)} a lap${of}.`;
}

function sayMistakesAt(line: Pick<PlannedRun, "corner">, facts: PlanFacts): string {
  const corner = cornerAt(line, facts);
  if (corner === undefined || corner.laps === 0) return "";
  return `${corner.mistakes} of ${counted(corner.laps, "lap")} had a mistake at corner ${corner.number}.`;
}

function sayHabits(line: Pick<PlannedRun, "corner">, facts: PlanFacts): string {
  const corner = cornerAt(line, facts);
  const { braking, throttle } = corner ?? {};
  return said(
    braking === undefined ? "" : sayBrakingSeen(braking),
    throttle === undefined ? "" : sayThrottleSeen(throttle),
  );
}

function saySector(
  line: Pick<PlannedRun, "sector">,
  { sector }: PlanFacts,
  corners: readonly Corner[],
): string {
  if (sector === undefined || sector.sector !== line.sector) return "";
  const within = cornersOfSector(corners, sector.sector);
  const where = within.length === 0 ? "" : ` (${sayCorners(within)})`;
  return `Sector ${sector.sector}${where} holds most time: ${seconds(sector.ms)} a lap between its usual and its best.`;
}

function saySpread({ spread }: PlanFacts): string {
  if (!spread.known) return "";
  const shares = spreadShares(spread.value).map(({ name, share }) => `${Math.round(share * 100)} % ${name}`);
  return `Of the spread of pace laps come ${listed(shares)}, from ${counted(spread.value.sessions, "session")}.`;
}

/** Only where evenings begin clearly slower: else the line rests on what is known of others. */
function sayOvernight({ overnight }: PlanFacts): string {
  if (!overnight.known || overnight.value.low <= 0) return "";
  const { pairs, ...range } = overnight.value;
  return `An evening begins ${sayBetween(range, hundredths, pace)} than the one before ended, from ${pairs} pairs of evenings.`;
}
