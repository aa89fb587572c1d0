import { type StripLine, type StripLines, type StripScale, stripScale } from "#charts/strip/stripScale.ts";
import {
  type Id,
  type Preferences,
  type Run,
  type StripLap,
  standsApart,
  stripLaps,
  stripMark,
} from "#domain";
import { type RunTimes, runTimes } from "#stats";
import type { LapBars } from "../laps/LapBar.tsx";

/** The strip of one run of the page, and the figures it is drawn by. */
export interface RunStrip {
  readonly laps: readonly StripLap[];
  readonly lines: StripLines;
  readonly scale: StripScale | undefined;
  /** What the bars of its table are drawn by. */
  readonly bars: LapBars | undefined;
}

export interface StripsOf {
  readonly shown: readonly { readonly run: Run; readonly number: number }[];
  readonly preferences: Preferences;
  /** The PB as it stands, and the lap of this session that holds it. */
  readonly pb: StripLine | undefined;
  readonly standingId: Id | undefined;
  readonly targetMs: number | undefined;
}

/**
 * The strips of a session's runs. Those that are driven for their time stand on one scale, with the PB and the target; a run
 * that is measured against nothing has a scale of its own, and its own usual lap alone.
 */
export function sessionStrips(about: StripsOf): ReadonlyMap<Id, RunStrip> {
  const { shown, preferences, pb } = about;
  const { bests, target } = seenIn(about);
  const runs = shown.map(({ run, number }) => {
    return {
      id: run.id,
      isApart: standsApart(run) !== undefined,
      laps: stripLaps([{ run, number }], bests, true),
      // Side by side the usual laps of a test's runs would tell how its settings compare.
      usual: run.rigTest === undefined ? usualLine(runTimes(run, preferences)) : undefined,
    };
  });
  const compared = runs.filter(({ isApart }) => !isApart);
  const common = stripScale(
    compared.flatMap(({ laps }) => laps),
    { pb, target },
  );
  return new Map(
    runs.map(({ id, isApart, laps, usual }) => {
      const bars = usual && barsOf(laps, usual.ms);
      return [
        id,
        isApart
          ? { laps, lines: { usual }, scale: stripScale(laps, { usual }), bars }
          : { laps, lines: { pb, usual, target }, scale: common, bars },
      ];
    }),
  );
}

/** The laps of all runs of one's own on one strip, with what they were usual, the PB and the target. */
export function wholeStrip(about: StripsOf, usual: StripLine | undefined): Pick<RunStrip, "laps" | "lines"> {
  const { shown, pb } = about;
  const { bests, target } = seenIn(about);
  const own = shown.filter(({ run }) => run.guest === undefined);
  return { laps: stripLaps(own, bests), lines: { pb, usual, target } };
}

/** The laps to be told as PBs, and the line of the target. */
function seenIn({ standingId, targetMs }: StripsOf): {
  readonly bests: ReadonlySet<Id>;
  readonly target: StripLine | undefined;
} {
  return {
    bests: new Set(standingId === undefined ? [] : [standingId]),
    target: targetMs === undefined ? undefined : { ms: targetMs },
  };
}

/** Bars reach as far as a strip of the run's clean laps does: a spin or a cut makes them no shorter. */
function barsOf(laps: readonly StripLap[], usualMs: number): LapBars | undefined {
  const scale = stripScale(laps.filter((lap) => stripMark(lap) === "plain"));
  if (scale === undefined) return undefined;
  return { usualMs, reachMs: Math.max(scale.slowest - usualMs, usualMs - scale.fastest) };
}

/** The usual lap as the run's head has it. */
function usualLine({ usual, usualDecimals }: RunTimes): StripLine | undefined {
  return usual.known ? { ms: usual.value, decimals: usualDecimals } : undefined;
}
