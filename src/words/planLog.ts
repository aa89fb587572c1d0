import type { PlannedRun } from "#domain";
import type { LineOutcome } from "#stats";
import { counted } from "./counted.ts";
import { drillWords } from "./planLine.ts";
import { sayCameTo } from "./planOutcome.ts";
import { sayRunTask } from "./runTask.ts";
import type { WhatNext } from "./suggestion.ts";

/** A line of a plan in one line: "Corner 5 · 8 laps, learning effort" */
export function sayLineInShort(line: PlannedRun): string {
  return `${line.purpose} · ${sayRunTask(line)}`;
}

/**
 * Which line of a plan it is, those left out counted too, so that none changes its place: "2 of 4"; empty where it is
 * none of them.
 */
export function sayPlaceInPlan({ id }: PlannedRun, plan: readonly PlannedRun[]): string {
  const at = plan.findIndex((line) => line.id === id);
  return at < 0 ? "" : `${at + 1} of ${plan.length}`;
}

/** How many laps of a line are driven, where its count stands beside them: "5 of 8 laps" */
export function sayLapsSoFar({ line: { laps: planned }, laps }: LineOutcome): string {
  return planned === undefined ? counted(laps, "lap") : `${laps} of ${counted(planned, "lap")}`;
}

/**
 * How far a line is met while it is driven.
 * @example "5 of 8 laps, no mistake at corner 5", "0 of 5 laps, stops at the mark: 0 of 0", "3 of 5 laps, 7 of 10 stops at the mark: good so far"
 */
export function sayLineSoFar(outcome: LineOutcome): string {
  const { line, laps, met, value, of } = outcome;
  const { laps: planned, check } = line;
  const driven = sayLapsSoFar(outcome);
  // Before its first try a drill says what is counted.
  const isCounted = check?.figure === "drill" && line.drill !== undefined;
  if (isCounted && (of ?? 0) === 0) return `${driven}, ${drillWords[line.drill].good}: 0 of 0`;
  const hasFigure = value !== undefined && of !== 0 && check !== undefined && check.figure !== "driven";
  const said = hasFigure ? `${driven}, ${sayCameTo(outcome)}` : driven;
  if (met !== "good") return said;
  return `${said}: ${laps >= (planned ?? 0) ? "good" : "good so far"}`;
}

/** Said where no line of a plan is left to drive. */
export function sayNoneLeft(outcomes: readonly LineOutcome[]): string {
  const isLeftOut = outcomes.some(({ met }) => met === "skipped" || met === "to come");
  return isLeftOut ? "Plan: every line of it is driven or left out." : "The plan is driven.";
}

/** A line of the plan as what comes next, in two sentences. */
export function nextOfLine(line: PlannedRun): WhatNext {
  const { purpose, attendTo, goodWhen } = line;
  const task = [sayRunTask(line), attendTo ?? ""].filter((part) => part !== "").join(", ");
  return {
    suggestion: `${purpose}: ${task}.`,
    reason: goodWhen === undefined ? "" : `Good when ${goodWhen}.`,
  };
}
