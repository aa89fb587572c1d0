import type { PlanCheck, PlannedRun } from "#domain";
import type { DraftLine, PlanRule } from "./planRules.ts";

/** What there is room for. */
export interface Room {
  /** Laps at most. */
  readonly laps: number;
  readonly minutes: number;
  /** Length of a lap, ms; undefined where none was driven: a minute and a half is assumed. */
  readonly lapMs: number | undefined;
}

const MOST_LINES = 5;
const LEAST_LINES = 3;
/** Laps of a run that still tell something, and of a warm-up. */
const LEAST_LAPS = 5;
const LEAST_WARM_UP = 2;
/** Between two runs. Common practice, no source. */
const MINUTES_BETWEEN = 2;
const MINUTE = 60_000;
/** A lap of a circuit that nobody has timed yet. Common practice, no source. */
const ASSUMED_LAP_MS = 90_000;
/** What is left out first where there is no room for all of it, and then where there is none for three runs. */
const leftOutFirst: readonly PlanRule[] = ["race", "drill", "again"];
const leftOutLast: readonly PlanRule[] = ["measure", "target", "warm-up", "after a break"];

/**
 * Lines as far as they fit into the laps and minutes there are: first what can be done without goes, then the second of what
 * costs; then runs get shorter, down to three of them; then they go one by one, what costs most last of all.
 */
export function fitLines(lines: readonly DraftLine[], room: Room): readonly DraftLine[] {
  let kept = lines;
  while (kept.length > MOST_LINES || (kept.length > LEAST_LINES && !fits(kept.map(shortest), room)))
    kept = without(kept, leftOutFirst, kept.length - 2);
  while (kept.length > 1 && !fits(kept.map(shortest), room))
    kept = without(kept, leftOutLast, kept.length - 1);
  const shortened = shorten(kept, room);
  const [line] = shortened;
  if (line === undefined || fits(shortened, room)) return shortened;
  return [withLaps(line, mostLaps(room))];
}

/**
 * Minutes of three short runs, where there are laps for them: a warm-up and two that tell something; undefined where there are not.
 */
export function minutesOfThree({
  laps,
  lapMs = ASSUMED_LAP_MS,
}: Pick<Room, "laps" | "lapMs">): number | undefined {
  const three = [LEAST_WARM_UP, LEAST_LAPS, LEAST_LAPS].map((each) => ({ laps: each }));
  return planLaps(three) > laps ? undefined : Math.ceil(planMinutes(three, lapMs));
}

function fits(lines: readonly DraftLine[], { laps, minutes, lapMs = ASSUMED_LAP_MS }: Room): boolean {
  const all = planLaps(lines);
  return all <= laps && planMinutes(lines, lapMs) <= minutes;
}

/** Laps of all runs of a plan; a line without laps counts as none. */
export function planLaps(lines: readonly Pick<PlannedRun, "laps">[]): number {
  return lines.reduce((sum, { laps = 0 }) => sum + laps, 0);
}

/**
 * How long runs take, in minutes: their laps, and two minutes between two runs (common practice, no source). A line without
 * laps counts as none.
 * @param lapMs length of a lap, ms
 */
export function planMinutes(lines: readonly Pick<PlannedRun, "laps">[], lapMs: number): number {
  return (planLaps(lines) * lapMs) / MINUTE + MINUTES_BETWEEN * Math.max(0, lines.length - 1);
}

const leastOf = ({ kind, laps }: DraftLine) =>
  Math.min(laps, kind === "warm-up" ? LEAST_WARM_UP : LEAST_LAPS);
const shortest = (line: DraftLine) => withLaps(line, leastOf(line));

/** One line fewer: the first that is named, else the one at an index. */
function without(
  lines: readonly DraftLine[],
  named: readonly PlanRule[],
  index: number,
): readonly DraftLine[] {
  const rule = named.find((one) => lines.some((line) => line.rule === one));
  const gone = rule === undefined ? index : lines.findIndex((line) => line.rule === rule);
  return lines.filter((_, at) => at !== gone);
}

/** A lap at a time off the longest run that can spare one. */
function shorten(lines: readonly DraftLine[], room: Room): readonly DraftLine[] {
  let kept = lines;
  while (!fits(kept, room)) {
    const spare = kept.filter((line) => line.laps > leastOf(line));
    const [longest] = spare.toSorted((a, b) => b.laps - a.laps);
    if (longest === undefined) return kept;
    kept = kept.map((line) => (line === longest ? withLaps(line, line.laps - 1) : line));
  }
  return kept;
}

/** Laps of one run alone: one at least. */
function mostLaps({ laps, minutes, lapMs = ASSUMED_LAP_MS }: Room): number {
  return Math.max(1, Math.min(laps, Math.floor((minutes * MINUTE) / lapMs)));
}

/** A line with fewer laps; what it is judged by asks for as many fewer. */
function withLaps(line: DraftLine, laps: number): DraftLine {
  const { figure, value = 0 } = line.check;
  if (figure !== "clean") return { ...line, laps };
  const check: PlanCheck = { figure, value: Math.max(1, value - (line.laps - laps)) };
  return { ...line, laps, check };
}
