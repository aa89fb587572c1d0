import type { AccountTarget } from "#combo";
import type { CalendarDate, Drill, Figure, Id, TargetKind } from "#domain";
import type { Span } from "#physics";
import type { AccountLines } from "../account/accountSteps.ts";
import type { SpreadSources } from "../evenings/spreadSources.ts";
import type { Overnight } from "../evenings/staysOvernight.ts";

/** What a corner says about the next session. */
export interface PlanCorner {
  readonly number: number;
  /** Unused road and mistakes there, ms a lap; undefined where neither is known. */
  readonly worth: Span | undefined;
  /** Unused road alone, ms a lap. */
  readonly unused: number | undefined;
  /** Laps with an own mistake there, of so many. */
  readonly mistakes: number;
  readonly laps: number;
  /** What those mistakes cost, ms a lap. */
  readonly mistakesMs: number | undefined;
  /** What most of the reviews that said something of the pedals said, with how many of how many. */
  readonly braking: CountedHabit<"early" | "late"> | undefined;
  readonly throttle: CountedHabit<"early" | "late" | "twice"> | undefined;
  /** The largest gap that a replay showed, metres. */
  readonly gap: { readonly at: "entry" | "apex" | "exit"; readonly metres: number } | undefined;
}

/** A word said of a corner in most of its reviews. */
export interface CountedHabit<W extends string> {
  readonly what: W;
  readonly count: number;
  readonly of: number;
}

/** A line of an earlier plan that was driven: what it was, and whether it worked. */
export interface TriedLine {
  readonly rule: string;
  readonly corner: number | undefined;
  readonly drill: Drill | undefined;
  readonly laps: number | undefined;
  /** Of a drill: so many tries of so many worked. */
  readonly came?: { readonly good: number; readonly tries: number } | undefined;
  readonly isGood: boolean;
}

/** What a plan is drafted from: figures of the last evenings of a combo, of its present page. Times in ms. */
export interface PlanFacts {
  /** Sessions and laps driven on the page; `before` on older pages of the combo. */
  readonly driven: { readonly sessions: number; readonly laps: number; readonly before: number };
  /** Laps and minutes of the usual evening, and a lap's length; undefined before the first. */
  readonly evening: { readonly laps: number; readonly minutes: number; readonly lapMs: number } | undefined;
  /** Days since the combo was driven last. */
  readonly daysSince: number | undefined;
  /** The last break that is over: after how many laps the old level was back. */
  readonly lastBreak: { readonly days: number; readonly laps: number } | undefined;
  /** The time account of the last evenings, and the laps it is of. */
  readonly account: (AccountLines & { readonly laps: number }) | undefined;
  /** What all those evenings are measured against; undefined where it is not one and the same kind. */
  readonly against?: AccountTarget["from"] | undefined;
  /** The evenings with pace laps that the account and the laps lost are of. */
  readonly evenings: number;
  /** Of so many laps so many were lost by a mistake of one's own, those without a time among them. */
  readonly lost: { readonly laps: number; readonly lost: number };
  /** In order of what they are worth. */
  readonly corners: readonly PlanCorner[];
  /** The sector that holds most time, from 1, ms a lap, and its usual time. */
  readonly sector: { readonly sector: number; readonly ms: number; readonly usual: number } | undefined;
  /** A rig test that waits for its next run, with laps a run and runs still to drive. */
  readonly rigTest: { readonly id: Id; readonly laps: number; readonly runs: number } | undefined;
  readonly overnight: Figure<Overnight>;
  readonly spread: Figure<SpreadSources>;
  /** The open target whose date comes next. */
  readonly target:
    | {
        readonly kind: TargetKind;
        readonly value: number;
        /** Of a `meanOf` target. */
        readonly laps?: number;
        readonly by: CalendarDate;
        readonly days: number;
        /** The one thing to do for it, in the driver's words. */
        readonly process?: string;
      }
    | undefined;
  /** Usual lap of the last evening that has one, and its day. */
  readonly usual: number | undefined;
  readonly usualOn?: CalendarDate | undefined;
  /** The best lap so far. */
  readonly best?: number | undefined;
  /** Scatter of the middle one of the evenings that the account is of. */
  readonly scatter: number | undefined;
  /** Race runs in the last evenings. */
  readonly races: number;
  /** Lines of earlier plans that were driven, the newest first. */
  readonly tried: readonly TriedLine[];
}
