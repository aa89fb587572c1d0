import { latestMs } from "#domain";
import type { AgainstTarget, KnownTime, RunFigures } from "./runFigures.ts";

/** The one thing a run says, with the numbers for the sentence; ms, a gain is negative. */
export type RunFinding =
  | { readonly kind: "guest" }
  | { readonly kind: "no times"; readonly driven: number }
  | {
      readonly kind: "first best";
      readonly ms: number;
      readonly decimals: number;
      /** The lap of this run that was the very first one, where that is another. */
      readonly first: Pick<KnownTime, "ms" | "decimals"> | undefined;
      /** The best-lap target that it is the first to reach. */
      readonly reachedMs?: number | undefined;
    }
  | {
      readonly kind: "new best";
      readonly ms: number;
      readonly decimals: number;
      readonly pbMs: number;
      readonly pbDecimals: number;
      readonly reachedMs?: number | undefined;
    }
  | {
      readonly kind: "level with best";
      readonly ms: number;
      readonly decimals: number;
      readonly pbMs: number;
    }
  | { readonly kind: "mistakes"; readonly mistakes: number; readonly flyingLaps: number }
  | {
      readonly kind: "target reached";
      readonly reached: number;
      readonly laps: number;
      readonly targetMs: number;
    }
  | {
      readonly kind: "against run before";
      readonly n: number;
      readonly ms: number;
      readonly low: number;
      readonly high: number;
    }
  | {
      readonly kind: "drift";
      readonly msPerLap: number;
      readonly low: number;
      readonly high: number;
      readonly laps: number;
    }
  | { readonly kind: "spread"; readonly scatterMs: number; readonly percent: number; readonly laps: number }
  | { readonly kind: "few"; readonly laps: number; readonly bestMs: number; readonly decimals: number };

/**
 * The first of these that is true: a guest drove; no times; a new or first personal best; untidy; level with
 * the personal best; the usual lap at the target; a clear change from the run before; a clear drift inside the run;
 * the spread; else the best of a few laps.
 */
export function runFinding(figures: RunFigures): RunFinding {
  const { best, counts, mistakes, flyingLaps } = figures;
  if (figures.isGuest) return { kind: "guest" };
  if (!best.known) return { kind: "no times", driven: counts.driven };
  return (
    aboutBest(figures) ??
    (figures.isUntidy ? { kind: "mistakes", mistakes, flyingLaps } : undefined) ??
    aboutLevel(figures) ??
    aboutChange(figures) ?? {
      kind: "few",
      laps: figures.laps,
      bestMs: best.value.ms,
      decimals: best.value.decimals,
    }
  );
}

function aboutBest({
  best,
  againstBest,
  firstBest,
  bestTargetReached: reachedMs,
}: RunFigures): RunFinding | undefined {
  if (!best.known) return undefined;
  const { ms, decimals, lapId } = best.value;
  if (firstBest !== undefined)
    return {
      ...{ kind: "first best", ms, decimals, reachedMs },
      first: firstBest.lapId === lapId ? undefined : firstBest,
    };
  if (!againstBest.known) return undefined;
  const { isNew, pbMs, pbDecimals } = againstBest.value;
  return isNew ? { kind: "new best", ms, decimals, pbMs, pbDecimals, reachedMs } : undefined;
}

function aboutLevel({ best, againstBest }: RunFigures): RunFinding | undefined {
  if (!best.known || !againstBest.known || !againstBest.value.isLevel) return undefined;
  const { ms, decimals } = best.value;
  return { kind: "level with best", ms, decimals, pbMs: againstBest.value.pbMs };
}

function isUsualThere({ usual, usualDecimals }: AgainstTarget): boolean {
  return usual !== undefined && latestMs({ ms: usual, decimals: usualDecimals }) <= 0;
}

function aboutChange({
  againstTarget,
  againstRunBefore,
  trend,
  scatter,
}: RunFigures): RunFinding | undefined {
  if (againstTarget.known && isUsualThere(againstTarget.value)) {
    const { reached, laps, targetMs } = againstTarget.value;
    return { kind: "target reached", reached, laps, targetMs };
  }
  if (againstRunBefore.known && againstRunBefore.value.isClear) {
    const { n, ms, low, high } = againstRunBefore.value;
    return { kind: "against run before", n, ms, low, high };
  }
  if (trend.known && (trend.value.low > 0 || trend.value.high < 0)) return { kind: "drift", ...trend.value };
  if (!scatter.known) return undefined;
  const { scatterMs, percent, laps } = scatter.value;
  return { kind: "spread", scatterMs, percent, laps };
}
