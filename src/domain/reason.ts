import type { Apart } from "./standsApart.ts";
import type { WrongMeasure } from "./wrongMeasure.ts";

/** Why a figure is not given, as data: too few of something, or something else that stands in the way. */
export type Reason = Shortage | Because;

/** What there can be too few of. */
export type Countable =
  | "timed lap"
  | "clean lap"
  | "clean lap with sectors"
  | "pace lap"
  | "exact pace lap"
  | "exact clean lap"
  | "pace lap in a row"
  | "pace lap with sectors"
  | "sector"
  | "session"
  | "session of each kind"
  | "session to come"
  | "step of neighbouring sessions"
  | "combo with this figure"
  | "pace run"
  | "pair of runs"
  | "pair of evenings in a row"
  | "pair of neighbouring runs"
  | "different place"
  | "forecast that came due"
  | "target that came due";

/**
 * Too few of something.
 * @example { needs: 5, of: "pace lap", has: 3, run: 2 }
 * @example { needs: 4, of: "session", each: { needs: 5, of: "pace lap" }, has: 1, period: "before" }
 */
export interface Shortage {
  readonly needs: number;
  readonly of: Countable;
  /** What each of them must hold to count. */
  readonly each?: { readonly needs: number; readonly of: Countable };
  readonly has: number;
  /** Where they are counted, where that is not what the figure itself is about. */
  readonly where?: "in the best session" | "before the change" | "after the change" | "on one side";
  /** Said where they are counted in the period before the one that is looked at. */
  readonly period?: "before";
  /** Number of the run in which they are counted, where that is another one. */
  readonly run?: number;
  /** How many more there are that do not count: from memory, or with fewer decimals. */
  readonly rough?: number;
}

/** Why a figure is not given although there is enough of everything, where nothing more is to be said. */
export type PlainCause =
  | "no target"
  | "no PB before"
  | "nothing to measure a session against"
  | "nothing to measure a period against"
  | "no figure yet"
  | "no figure at the setting"
  | "reached at the setting"
  | "already reached"
  | "level there already"
  | "change too long ago"
  | "no usual lap on both sides"
  | "more than a year away"
  | "nothing driven lately"
  | "date to come"
  | "target gone"
  | "page turned before its date"
  | "no two laps in a row"
  | "no pace run before"
  | "not seen in a replay"
  | "both runs the same"
  | "the most driven"
  | "all at one time"
  | "change too long ago"
  | "sessions that do not differ"
  | "pairs that do not differ"
  | "all values equal"
  | "along a step"
  | "along a line or a step";

/** Something in the way that is no shortage, with what the sentence needs. */
export type Because =
  | { readonly [Cause in PlainCause]: { readonly because: Cause } }[PlainCause]
  | { readonly because: "nothing to find"; readonly gainMs: number }
  | { readonly because: "place not above zero"; readonly smallest: number }
  | { readonly because: "test stopped early"; readonly pairs: number; readonly planned: number }
  | { readonly because: "pairs not here"; readonly pairs: number; readonly planned: number }
  | { readonly because: "not compared"; readonly run: NotCompared }
  | WrongMeasure;

/** What keeps a run from being compared with another. */
export type NotCompared = Apart | "race" | "partly written";
