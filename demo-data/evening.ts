import type { DrillCount, Effort, Focus, RunKind, Surface } from "#domain";
import type { ComboKey } from "./combos.ts";
import type { LineOfStory } from "./tellLines.ts";

/** A run as the story wants it; the laps themselves are drawn. */
export interface Drive {
  readonly laps: number;
  readonly kind?: RunKind;
  readonly effort?: Effort;
  readonly surface?: Surface;
  /** It is the next run of the gain test; with which setting is drawn. */
  readonly isPairOfTest?: true;
  readonly guest?: string;
  /** Only so many laps were written down, from memory, to tenths. */
  readonly remembered?: number;
  readonly isSummary?: true;
  readonly race?: { readonly grid: number; readonly finish: number };
  readonly beginsWithOutLap?: true;
  /** Number of a lap helped along by the car in front: the driver says it is not the PB. */
  readonly towed?: number;
  /** Number of a lap that was typed twice; the second was deleted. */
  readonly typedTwice?: number;
  readonly tyres?: string;
  readonly setup?: string;
  readonly fuelLitres?: number;
  readonly note?: string;
  /** The line of the evening's plan that it drives, from 1. */
  readonly line?: number;
  /** What was counted in it, where it is a drill. */
  readonly count?: DrillCount;
}

/** One sitting of the story. */
export interface Evening {
  readonly date: string;
  readonly clock: string;
  readonly combo: ComboKey;
  readonly focus: Focus;
  readonly note: string;
  readonly conditions?: string;
  readonly targetMs?: number;
  readonly plan?: readonly LineOfStory[];
  /** Written down the day after; the time of day is not known. */
  readonly isEnteredLater?: true;
  readonly hasSectors?: true;
  readonly drives: readonly Drive[];
}

/** An evening of a combo whose file says which. */
export type EveningOfCombo = Omit<Evening, "combo">;
