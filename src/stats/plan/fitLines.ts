import type { PlanCheck } from "#domain";
import type { DraftLine, PlanRule } from "./planRules.ts";

/** What there is room for. */
export interface Room {
  /** Laps at most. */
  readonly laps: number;
  readonly minutes: number;
  /** Length of a lap, ms; undefined where none was driven. */
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
/** What is left out first where there is no room. */
const dispensable: readonly PlanRule[] = ["race", "drill", "again"];

/**
 * Lines as far as they fit into the laps and minutes there are: first what can be done without goes, then runs get shorter,
 * then lines go from the end of the middle, so that the opening and the run that shows the effect stay longest.
 */
export function fitLines(lines: readonly DraftLine[], room: Room): readonly DraftLine[] {
  let kept = lines;
  while (kept.length > MOST_LINES || (kept.length > LEAST_LINES && !fits(kept.map(shortest), room)))
    kept = without(kept);
  const shortened = shorten(kept, room);
  if (fits(shortened, room)) return shortened;
  return squeezed(shortened, room);
}

function fits(lines: readonly DraftLine[], { laps, minutes, lapMs = 0 }: Room): boolean {
  const all = lapsOf(lines);
  return all <= laps && minutesOf(lines, lapMs) <= minutes;
}

const lapsOf = (lines: readonly DraftLine[]) => lines.reduce((sum, { laps }) => sum + laps, 0);

function minutesOf(lines: readonly DraftLine[], lapMs: number): number {
  return (lapsOf(lines) * lapMs) / MINUTE + MINUTES_BETWEEN * Math.max(0, lines.length - 1);
}

const leastOf = ({ kind, laps }: DraftLine) =>
  Math.min(laps, kind === "warm-up" ? LEAST_WARM_UP : LEAST_LAPS);
const shortest = (line: DraftLine) => withLaps(line, leastOf(line));

/** One line fewer: what can be done without, else the second of what costs, else the one before the last. */
function without(lines: readonly DraftLine[]): readonly DraftLine[] {
  const rule = dispensable.find((one) => lines.some((line) => line.rule === one));
  const gone = rule === undefined ? lines.length - 2 : lines.findIndex((line) => line.rule === rule);
  return lines.filter((_, index) => index !== gone);
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

/** Not even the shortest runs fit: as many of the lines as do, and at least one lap of what matters most. */
function squeezed(lines: readonly DraftLine[], room: Room): readonly DraftLine[] {
  let kept = lines;
  while (kept.length > 1 && !fits(kept, room))
    kept = kept.filter((_, index) => index !== 0 || kept.length === 1);
  const [line] = kept;
  if (line === undefined || fits(kept, room)) return kept;
  const { laps, minutes, lapMs = 0 } = room;
  const most = Math.min(laps, lapMs === 0 ? laps : Math.floor((minutes * MINUTE) / lapMs));
  return [withLaps(line, Math.max(1, most))];
}

/** A line with fewer laps; what it is judged by asks for as many fewer. */
function withLaps(line: DraftLine, laps: number): DraftLine {
  const { figure, value = 0 } = line.check;
  if (figure !== "clean") return { ...line, laps };
  const check: PlanCheck = { figure, value: Math.max(1, value - (line.laps - laps)) };
  return { ...line, laps, check };
}
