import type { Braking, CalendarDate, Figure, Id, RemarkKind, Straight, Throttle } from "#domain";
import type { AssumedFact, Span } from "#physics";
import type { LevelGain } from "../level/levelOver.ts";

/** What the road left unused at a corner costs, judged from a replay: an estimate, ms a lap where nothing else is said. */
export interface UnusedRoad {
  readonly reviewId: Id;
  readonly on: CalendarDate;
  /** Metres left unused; below zero over the edge; absent where nobody looked. */
  readonly gaps: { readonly entry?: number; readonly apex?: number; readonly exit?: number };
  readonly ms: Span;
  /** Speed given away at the exit, km/h. */
  readonly speed: Span;
  /** The gap that is largest, and in car widths. */
  readonly largest: {
    readonly at: "entry" | "apex" | "exit";
    readonly metres: number;
    readonly cars: number;
  };
  /** The shorter way beats the wider arc here, or all of the road is used. */
  readonly nothingToGain: boolean;
  readonly assumed: readonly AssumedFact[];
}

/** What the driver's own mistakes at a corner cost in the last sessions. */
export interface MistakesAtCorner {
  /** Laps with an own mistake or a cut that name the corner, by kind, the kind noted most first. */
  readonly counts: readonly { readonly kind: RemarkKind; readonly count: number }[];
  /** Timed and untimed laps written one by one that were looked at, and those with an own mistake there. */
  readonly laps: number;
  readonly mistakes: number;
  /** Share of laps with a mistake there, with Wilson's interval. */
  readonly share: { readonly share: number; readonly low: number; readonly high: number } | undefined;
  /** Its part of the account's line of mistakes, ms a lap; undefined where there is no account. */
  readonly ms: number | undefined;
}

/** How what is unused at a corner has changed from one review to the next, ms a lap; below zero less is given away. */
export interface CornerChange {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly ms: Span;
}

/** What was said of the pedals and the line there, over all reviews of the page. */
export interface CornerHabits {
  readonly reviews: number;
  readonly braking: readonly { readonly what: Braking; readonly count: number }[];
  readonly throttle: readonly { readonly what: Throttle; readonly count: number }[];
  readonly offLine: number;
}

/** Why a corner is worth working on, as data; the strongest first. */
export type WhyCorner =
  | { readonly why: "straight after"; readonly after: Straight; readonly isAssumed: boolean }
  | { readonly why: "mistakes"; readonly mistakes: number; readonly laps: number }
  | { readonly why: "largest gap"; readonly at: "entry" | "apex" | "exit"; readonly metres: number }
  | { readonly why: "sector"; readonly sector: number }
  | { readonly why: "last of its chain" };

/** One corner in the answer. */
export interface CornerWorth {
  readonly number: number;
  readonly name?: string;
  /** The newest review that holds gaps of it; a reason where there is none, or where its geometry is wrong. */
  readonly unused: Figure<UnusedRoad>;
  readonly mistakes: MistakesAtCorner;
  readonly change: CornerChange | undefined;
  readonly habits: CornerHabits;
  /** Unused road and mistakes together, ms a lap; undefined where neither is known. */
  readonly worth: Span | undefined;
  readonly why: readonly WhyCorner[];
}

/** Which corner first, what each is worth, and what became of it. */
export interface CornersReport {
  /** In lap order, corners that are only named in remarks or reviews among them. */
  readonly corners: readonly CornerWorth[];
  /** Numbers of those worth something, the most first. */
  readonly order: readonly number[];
  readonly reviews: readonly {
    readonly id: Id;
    readonly on: CalendarDate;
    readonly corners: readonly number[];
  }[];
  /** Sessions and laps whose remarks were looked at. */
  readonly sessions: number;
  readonly laps: number;
  /** Sum of all changes between the two last reviews that share corners, and whether the lap times followed. */
  readonly change:
    | (CornerChange & { readonly corners: readonly number[]; readonly level: Figure<LevelGain> })
    | undefined;
  /** Unused road of all corners together, and the pace line of the account of the same sessions, ms a lap. */
  readonly unusedMs: Span | undefined;
  readonly paceMs: number | undefined;
  /** The sector that holds most time, from 1, and the corners known to lie in it. */
  readonly sector:
    | { readonly sector: number; readonly ms: number; readonly corners: readonly number[] }
    | undefined;
}
