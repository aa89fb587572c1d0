import { isReached } from "#combo";
import { type AskedFigure, formatLapTime, sayDate, type Target, type TargetKind } from "#domain";
import type { TargetFigure, TargetState } from "#stats";
import { hundredths, sayAmount, share, thousandths, type Unit } from "./amount.ts";
import { asSentence, counted } from "./counted.ts";
import { sayLapTime } from "./lapTime.ts";
import { sayTooFew } from "./reason.ts";
import { sayLevel, sayUsual } from "./usualLap.ts";

const units: Readonly<Record<TargetKind, Unit>> = {
  best: thousandths,
  median: hundredths,
  meanOf: thousandths,
  scatter: hundredths,
  cleanShare: share,
};

/**
 * A value that is wanted, in a target's unit: every digit that was typed.
 * @example sayTargetValue("scatter", 300) // "± 0.30 s"
 */
export function sayTargetValue(kind: TargetKind, value: number): string {
  if (kind === "scatter") return `± ${hundredths.say(value)}`;
  return kind === "cleanShare" ? share.say(value) : formatLapTime(value);
}

/**
 * The figure that stands against a target now, or came nearest to it, in the target's unit: as far as it is known.
 * @example sayTargetFigure("best", { value: 83_400, decimals: 1 }) // "about 1:23.4"
 * @example sayTargetFigure("median", { value: 84_320, decimals: 2, isLevel: true }) // "level 1:24.32"
 */
export function sayTargetFigure(kind: TargetKind, { value, decimals, isLevel }: TargetFigure): string {
  if (isLevel) return `level ${sayLevel(value)}`;
  if (kind === "median") return sayUsual(value, decimals);
  return kind === "best" || kind === "meanOf" ? sayLapTime(value, decimals) : sayTargetValue(kind, value);
}

/**
 * A figure against a target of which only the value was kept, as when it was set. Of a usual lap it is the level.
 * @example sayKnownFigure("median", 84_317) // "level 1:24.32"
 */
export function sayKnownFigure(kind: TargetKind, value: number): string {
  return kind === "median" ? `level ${sayLevel(value)}` : sayTargetValue(kind, value);
}

/** What a target's figure is called: "usual lap". */
export function targetFigure({ kind, laps }: AskedFigure): string {
  switch (kind) {
    case "best":
      return "best lap";
    case "median":
      return "usual lap";
    case "meanOf":
      return laps === undefined ? "mean lap" : `mean of ${counted(laps, "lap")}`;
    case "scatter":
      return "scatter";
    case "cleanShare":
      return "share of clean laps";
  }
}

/** The best of it over some time: "best lap", "best usual lap". */
export function bestFigure(target: AskedFigure): string {
  const figure = targetFigure(target);
  return target.kind === "best" ? figure : `best ${figure}`;
}

/**
 * A target in words.
 * @example "Best lap 1:23.000 by Wed 14 Oct 2026"
 */
export function sayTarget(target: AskedFigure & Pick<Target, "value" | "by">): string {
  const by = target.by === undefined ? "" : ` by ${sayDate(target.by)}`;
  return asSentence(`${targetFigure(target)} ${sayTargetValue(target.kind, target.value)}${by}`);
}

/**
 * The way to a target in words, for those who do not see its picture.
 * @example sayWay({ kind: "best", start: 84_245, setOn: "2026-10-20", value: 83_300, by: "2026-12-13" }, { value: 83_744, decimals: 3 })
 * // "The way from 1:24.245 on Tue 20 Oct 2026 to 1:23.744 now; wanted 1:23.300 by Sun 13 Dec 2026"
 */
export function sayWay(
  { kind, start, setOn, value, by }: Pick<Target, "kind" | "start" | "setOn" | "value" | "by">,
  now: TargetFigure | undefined,
): string {
  const from = start === undefined ? sayDate(setOn) : `${sayKnownFigure(kind, start)} on ${sayDate(setOn)}`;
  const to = now === undefined ? "today" : `${sayTargetFigure(kind, now)} now`;
  const until = by === undefined ? "" : ` by ${sayDate(by)}`;
  return `The way from ${from} to ${to}; wanted ${sayTargetValue(kind, value)}${until}`;
}

/**
 * How far a target is reached. "Reached" only where it stands so: a level at the target is not very likely there yet.
 * @example "75 % of the way, 0.250 s to go"
 * @example "Your level is 0.05 s faster, not very likely yet"
 */
export function sayProgress({
  target: { kind },
  standing,
  progress,
}: Pick<TargetState, "standing" | "progress"> & { readonly target: Pick<Target, "kind"> }): string {
  if (!progress.known) return sayTooFew(progress.reason);
  const unit = units[kind];
  const { progress: way, left } = progress.value;
  const toGo = kind === "cleanShare" ? -left : left;
  if (toGo <= 0 && kind === "median" && !isReached(standing))
    return toGo === 0
      ? "Your level is there, not very likely yet"
      : `Your level is ${sayAmount(toGo, unit)} faster, not very likely yet`;
  if (toGo <= 0) return toGo === 0 ? "Reached" : `Reached, with ${sayAmount(toGo, unit)} to spare`;
  if (way >= 1) return `${sayAmount(toGo, unit)} to go, though it was reached when it was set`;
  if (way >= 0) return `${Math.floor(way * 100)} % of the way, ${sayAmount(toGo, unit)} to go`;
  const further = toGo - toGo / (1 - way);
  return `${sayAmount(toGo, unit)} to go, ${sayAmount(further, unit)} further than when it was set`;
}
