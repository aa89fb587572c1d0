import { aboutRemark, type StripLap } from "#domain";

/** The lap times at the two ends of a strip, ms: the fastest lies at the bottom. */
export interface StripScale {
  readonly fastest: number;
  readonly slowest: number;
}

/** A time that a strip draws as a line across. */
export interface StripLine {
  readonly ms: number;
  readonly decimals?: number | undefined;
}

/** What the laps are seen against. */
export interface StripLines {
  readonly pb?: StripLine | undefined;
  readonly usual?: StripLine | undefined;
  /** What is usual over weeks: in the verdict of a run, whose own usual lap is what is judged. */
  readonly level?: StripLine | undefined;
  readonly target?: StripLine | undefined;
}

/** A lap's distance from the middle that is never taken for far off: 0.8 % of the lap. */
const nearShare = 0.008;
/** Quarters of the laps apart from each other that are still near. */
const nearQuarters = 3;
/** A line may lie twice as far away as a lap before it is left out. */
const lineReach = 2;
/** Laps all alike fill no more than their part of such a share of the lap: noise is not drawn as mountains. */
const leastShare = 0.004;

/**
 * One scale for the laps of one or more strips and their lines. Laps far from the middle of the clean ones (more than three
 * times their inner half, and than 0.8 % of a lap) are left out, so that one spin does not flatten the rest; so is a line more
 * than twice as far off.
 * @returns undefined where no lap has a time and there is no line
 */
export function stripScale(laps: readonly StripLap[], lines: StripLines = {}): StripScale | undefined {
  const timed = laps.filter((lap) => lap.ms !== undefined);
  const clean = timed.filter((lap) => !isSpoilt(lap));
  const shown = [lines.pb?.ms, lines.usual?.ms, lines.level?.ms, lines.target?.ms].filter(
    (ms) => ms !== undefined,
  );
  const sorted = (clean.length > 0 ? clean : timed).map(({ ms }) => ms as number).sort((a, b) => a - b);
  if (sorted.length === 0) return shown.length === 0 ? undefined : widened(shown);
  const middle = at(sorted, 0.5);
  const reach = Math.max(middle * nearShare, (at(sorted, 0.75) - at(sorted, 0.25)) * nearQuarters);
  const near = timed.map(({ ms }) => ms as number).filter((ms) => Math.abs(ms - middle) <= reach);
  const nearLines = shown.filter((ms) => Math.abs(ms - middle) <= reach * lineReach);
  return widened([middle, ...near, ...nearLines]);
}

function isSpoilt({ remarks = [] }: StripLap): boolean {
  return remarks.some(({ kind }) => aboutRemark(kind).spoils || aboutRemark(kind).apart);
}

/** The value so far up a sorted list; good enough to draw by, and in no figure. */
function at(sorted: readonly number[], share: number): number {
  return sorted[Math.round((sorted.length - 1) * share)] as number;
}

function widened(values: readonly number[]): StripScale {
  const fastest = values.reduce((a, b) => Math.min(a, b));
  const slowest = values.reduce((a, b) => Math.max(a, b));
  const lacking = Math.max(0, fastest * leastShare - (slowest - fastest)) / 2;
  return { fastest: fastest - lacking, slowest: slowest + lacking };
}
