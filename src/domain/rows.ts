/**
 * The rows of a logbook, schema 4. Times are integer milliseconds, instants epoch milliseconds, lengths metres,
 * angles degrees, torque N·m, dates local calendar dates "2026-10-14". An absent field means "not known".
 */
import type { Remark } from "./remarks.ts";

/** UUID version 7 (RFC 9562). */
export type Id = string;
/** A local calendar date, "yyyy-MM-dd". */
export type CalendarDate = string;

/** What every row and every lap carries. `deletedAt` marks a deleted row, so that two copies can merge. */
export interface Stamped {
  readonly id: Id;
  readonly createdAt: number;
  readonly updatedAt: number;
  readonly deletedAt?: number;
  /**
   * The stamps it had before, ascending. One greater than `updatedAt` was found to be ahead of the clock, and was
   * replaced.
   */
  readonly had?: readonly number[];
  /** Stamps of other versions of it that were found to be ahead of the clock, ascending: these versions stay no more. */
  readonly disproved?: readonly number[];
}

/** A car, and what is known of how it drives; without it typical values are assumed, and called so. */
export interface Car extends Stamped {
  readonly name: string;
  readonly width?: number;
  /** Coefficient of friction of its tyres on a dry road. */
  readonly grip?: number;
  /** m/s². */
  readonly braking?: number;
  readonly drive?: number;
  /** m/s. */
  readonly topSpeed?: number;
}

export interface Track extends Stamped {
  readonly name: string;
}

/** Kinds of bend, the tightest first. */
export const bends = ["hairpin", "slow", "middling", "fast", "kink"] as const;
export type Bend = (typeof bends)[number];
/** What follows a corner; after "none" the next one of its chain begins at once. */
export const straights = ["none", "short", "middling", "long"] as const;
export type Straight = (typeof straights)[number];

/** A corner of a layout; all but the number may be unknown. */
export interface Corner {
  readonly number: number;
  readonly name?: string;
  readonly direction?: "left" | "right";
  readonly bend?: Bend;
  /** The straight after it, and its length where that is known. */
  readonly after?: Straight;
  readonly afterLength?: number;
  /** Number of the sector it lies in, from 1. */
  readonly sector?: number;
  /** Radius of the inner edge, width of the road without kerbs, angle the road turns through. */
  readonly radius?: number;
  readonly width?: number;
  readonly angle?: number;
  /** Metres of kerb a driver may use beside the road. */
  readonly kerbs?: { readonly entry?: number; readonly apex?: number; readonly exit?: number };
}

/** One layout of a track. The only layout of a track has an empty name. */
export interface Layout extends Stamped {
  readonly trackId: Id;
  readonly name: string;
  /** Number of sectors the simulator times; absent when the driver has not said. */
  readonly sectors?: number;
  readonly length?: number;
  readonly corners: readonly Corner[];
}

/** One car on one track layout; lap times compare only inside a combo. */
export interface Combo extends Stamped {
  readonly carId: Id;
  readonly layoutId: Id;
  /** Lowest speed seen in a corner with this car, m/s. */
  readonly lowestSpeeds?: readonly { readonly number: number; readonly speed: number }[];
  /** Practice that the driver counts on from now on; what is absent is taken as it was lately. */
  readonly practice?: AssumedPractice;
}

/** How much the driver means to practise. */
export interface AssumedPractice {
  readonly sessionsAWeek?: number;
  /** Timed laps a session. */
  readonly lapsASession?: number;
}

/**
 * A new page of a combo: from this instant on times no longer compare with those before. A combo without such a
 * row has one page that began with its first session. A session belongs to the latest page with `from` <= its start.
 */
export interface Page extends Stamped {
  readonly comboId: Id;
  readonly from: number;
  readonly reason: string;
}

/** A time that the driver wants to be measured against. */
export interface ReferenceLap extends Stamped {
  readonly comboId: Id;
  readonly ms: number;
  readonly decimals: number;
  /** Where the time comes from, in the driver's words. */
  readonly source: string;
}

export const focuses = [
  { focus: "free", word: "free" },
  { focus: "line", word: "line" },
  { focus: "kerbs", word: "kerbs" },
  { focus: "braking", word: "braking" },
  { focus: "throttle", word: "throttle" },
  { focus: "traction", word: "traction" },
  { focus: "steadiness", word: "steadiness" },
  { focus: "race pace", word: "race pace" },
  { focus: "rig", word: "rig" },
] as const;
export type Focus = (typeof focuses)[number]["focus"];

export const runKinds = ["warm-up", "drill", "pace", "race"] as const;
export type RunKind = (typeof runKinds)[number];
export const efforts = ["easy", "learning", "brisk", "full"] as const;
export type Effort = (typeof efforts)[number];

/** What a drill counts: exits without wheelspin, stops at the mark, laps at half throttle, passes one car's width from the kerb. */
export const drills = ["traction", "braking", "half throttle", "kerb"] as const;
export type Drill = (typeof drills)[number];

/** Figures that say whether a run of the plan worked. */
export const planFigures = [
  "clean",
  "usual",
  "best",
  "scatter",
  "corner",
  "sector",
  "drill",
  "driven",
] as const;
export type PlanFigure = (typeof planFigures)[number];

/** When a run of the plan has worked. */
export interface PlanCheck {
  readonly figure: PlanFigure;
  /**
   * At least so many clean laps, or so many thousandths of a drill's tries; at most so many ms of a usual lap, a best one, a
   * scatter, the median of the line's sector; at most so many mistakes at the line's corner. Absent for `driven`: all its laps.
   */
  readonly value?: number;
}

/** One run of a session's plan, as it is told to the driver, and what it was drafted from. */
export interface PlannedRun {
  /** Absent in rows of an earlier version, whose runs name no line. */
  readonly id?: Id;
  readonly purpose: string;
  readonly laps?: number;
  /** Absent: a pace run. */
  readonly kind?: RunKind;
  readonly effort?: Effort;
  readonly attendTo?: string;
  readonly goodWhen?: string;
  /** Why it was proposed, in the driver's figures of that day. */
  readonly reason?: string;
  /** Name of the rule that drafted it; absent where the driver wrote it. */
  readonly rule?: string;
  readonly corner?: number;
  /** From 1. */
  readonly sector?: number;
  readonly check?: PlanCheck;
  /** What is counted instead of timed, in a drill. */
  readonly drill?: Drill;
  /** The rig test whose next run it is; nothing of it travels with the plan. */
  readonly rigTest?: Id;
  /** The driver went past it. */
  readonly skipped?: true;
}

/** The plan of the next session with a combo, written before it begins; or a template with a name of its own. */
export interface Plan extends Stamped {
  /** Absent in a template. */
  readonly comboId?: Id;
  /** Name of a template. */
  readonly name?: string;
  /** Minutes the driver has for it. */
  readonly minutes?: number;
  readonly lines: readonly PlannedRun[];
}

/** One sitting with one combo. Without `endedAt` it is still open. */
export interface Session extends Stamped {
  readonly comboId: Id;
  /** Start; where the time of day is not known, noon of `date` in `zone`. */
  readonly startedAt: number;
  readonly isTimeOfDayKnown: boolean;
  /** The practice day: local, a day beginning at the hour the driver chose (04:00). */
  readonly date: CalendarDate;
  /** IANA name of the time zone the driver sat in. */
  readonly zone: string;
  readonly endedAt?: number;
  readonly focus: Focus;
  readonly note: string;
  /** Conditions in the driver's words. */
  readonly conditions?: string;
  /** Target of the day, a lap time. */
  readonly targetMs?: number;
  readonly plan?: readonly PlannedRun[];
}

export const surfaces = ["dry", "damp", "wet"] as const;
export type Surface = (typeof surfaces)[number];

/** How a lap time was come by. */
export type LapSource = "typed" | "memory" | "imported";

/** A lap. Without `ms` it has no time (it ended in a wall, or nobody looked). */
export interface Lap extends Stamped {
  /** Place in the run; laps sort by `n`, then by id. Need not be whole: a lap moved between 3 and 4 gets 3.5. */
  readonly n: number;
  readonly ms?: number;
  /** How many decimals of a second are known, 0 to 3. Stands whenever `ms` does. */
  readonly decimals?: number;
  readonly sectors?: readonly number[];
  /** How many decimals of each sector are known, 0 to 3, as many as there are sectors. Absent means three of each. */
  readonly sectorDecimals?: readonly number[];
  readonly source: LapSource;
  readonly remarks: readonly Remark[];
  readonly note?: string;
  /** The driver said: not my PB. */
  readonly isNotBest?: true;
  /** The driver confirmed it although it lay far from all that was known: nothing typed later is measured by it. */
  readonly isOdd?: true;
}

/** The place of a run in a rig test. */
export interface RunOfTest {
  /** The test. */
  readonly id: Id;
  /** From 1. */
  readonly pair: number;
  /** The setting that was on. */
  readonly side: "A" | "B";
  /** Why it does not count, in the driver's words; absent where it does. */
  readonly void?: string;
}

/** What was counted in a run: tries of one drill, and how many of them worked. */
export interface DrillCount {
  readonly drill: Drill;
  /** Absent where the drill is of the whole lap. */
  readonly corner?: number;
  readonly tries: number;
  readonly good: number;
}

/** A run written as a whole instead of lap by lap. */
export interface RunSummary {
  readonly laps: number;
  readonly bestMs?: number;
  readonly bestDecimals?: number;
  readonly usualMs?: number;
  readonly usualDecimals?: number;
  /** Laps with an own mistake. */
  readonly off?: number;
  /** The driver confirmed its best or its usual although it lay far from all that was known. */
  readonly isOdd?: true;
}

/** From leaving the pits to coming back in. Laps live inside their run's row. */
export interface Run extends Stamped {
  readonly sessionId: Id;
  readonly comboId: Id;
  /** Place in the session, from 1; runs sort by `n`, then by id. */
  readonly n: number;
  readonly startedAt: number;
  readonly endedAt?: number;
  readonly kind: RunKind;
  readonly effort: Effort;
  readonly surface: Surface;
  /** The rig settings in force. */
  readonly rigId?: Id;
  /** Present in a run of a rig test: it carries its setting itself. */
  readonly rigTest?: RunOfTest;
  /** The line of the session's plan it drives. */
  readonly line?: Id;
  /** Drills counted in it. */
  readonly counts?: readonly DrillCount[];
  readonly tyres?: string;
  readonly fuelLitres?: number;
  readonly setup?: string;
  readonly assists?: string;
  /** Present when someone else drove; their name, or empty. In no figure. */
  readonly guest?: string;
  readonly summary?: RunSummary;
  /** Laps driven, where only some of them were written down. */
  readonly lapsDriven?: number;
  readonly gridPlace?: number;
  readonly finishPlace?: number;
  readonly note: string;
  readonly laps: readonly Lap[];
}

/** A dated record of the rig's settings; a change is a new record. */
export interface RigSettings extends Stamped {
  readonly from: CalendarDate;
  readonly name: string;
  readonly screen: {
    readonly kind?: "flat" | "three" | "curved" | "headset";
    readonly width?: number;
    readonly height?: number;
    readonly eyeDistance?: number;
    readonly radius?: number;
    readonly bezel?: number;
    readonly sideAngle?: number;
    readonly pixelsAcross?: number;
  };
  /** Field of view as set in the simulator. */
  readonly view: {
    readonly degrees?: number;
    readonly axis?: "horizontal" | "vertical";
    readonly note?: string;
  };
  readonly wheel: {
    readonly name?: string;
    readonly torque?: number;
    readonly gainPercent?: number;
    readonly damping?: number;
    readonly rotation?: number;
    readonly rimRadius?: number;
    readonly note?: string;
  };
  /** Dead zones in percent of the travel. */
  readonly pedals: {
    readonly name?: string;
    readonly brakeForceKg?: number;
    readonly loadCellKg?: number;
    readonly brakeDeadZone?: number;
    readonly throttleDeadZone?: number;
    readonly curve?: string;
    readonly note?: string;
  };
  /** Heights above the floor the pedals stand on. */
  readonly seat: { readonly height?: number; readonly eyeHeight?: number; readonly note?: string };
  readonly note: string;
}

export const targetKinds = ["best", "median", "meanOf", "scatter", "cleanShare"] as const;
export type TargetKind = (typeof targetKinds)[number];

/** What is wanted. */
interface Wanted {
  readonly kind: TargetKind;
  /** Milliseconds; for `cleanShare` thousandths (0.8 is 800). */
  readonly value: number;
  /** Number of laps of a `meanOf` target. */
  readonly laps?: number;
  readonly by?: CalendarDate;
}

/** What a target was until it was changed. */
export interface EarlierTarget extends Wanted {
  /** When it was changed, epoch ms, and that day. */
  readonly until: number;
  readonly untilDay: CalendarDate;
}

/** A wanted figure for a combo by a date. */
export interface Target extends Stamped, Wanted {
  readonly comboId: Id;
  readonly setAt: number;
  readonly setOn: CalendarDate;
  /** The figure on the day it was set, where there was one. */
  readonly start?: number;
  /** One thing to do, not a result: "brake later for corner 5". */
  readonly process?: string;
  /** What it is for, in the driver's words. */
  readonly why?: string;
  readonly note?: string;
  /** What it was before, oldest first. A slip put right on the day is not kept. */
  readonly earlier?: readonly EarlierTarget[];
  readonly archivedAt?: number;
}

/** What was said about a target's chance, kept to be scored. */
export interface Forecast extends Stamped {
  readonly targetId: Id;
  readonly comboId: Id;
  readonly madeOn: CalendarDate;
  readonly by: CalendarDate;
  readonly chance: number;
  readonly method: string;
  /** The last session that was driven with the combo then: none is made twice after the same one. */
  readonly madeAfter?: Id;
  /** The target as it was then; absent in rows of an earlier version: as it is now. */
  readonly kind?: TargetKind;
  readonly value?: number;
  readonly laps?: number;
  /** The practice it counted on: sessions until the date, and timed laps in each. */
  readonly sessions?: number;
  readonly lapsASession?: number;
  /** Scored: whether it was reached by its date, and the day that was found. */
  readonly reached?: boolean;
  readonly scoredOn?: CalendarDate;
}

/** What a rig test judges its settings by: the usual lap of a run, or how far its laps differ. */
export const testFigures = ["usual", "scatter"] as const;
export type TestFigure = (typeof testFigures)[number];

/** A planned comparison of two settings in pairs of runs. Its runs name it (`Run.rigTest`). */
export interface RigTest extends Stamped {
  readonly comboId: Id;
  readonly question: string;
  /** What is driven as A and as B, in words: "gain 72 %". Absent in old rows: the names of the records stand for them. */
  readonly sayA?: string;
  readonly sayB?: string;
  /** The value of the rig in which they differ ("wheel.gainPercent") and what it is on either side, as a record stores it. */
  readonly field?: string;
  readonly valueA?: string | number;
  readonly valueB?: string | number;
  /** Records that stand for a side: the one in force when the test was planned is A, the one made of a B that was kept is B. */
  readonly rigA?: Id;
  readonly rigB?: Id;
  /** Absent: the usual lap. */
  readonly figure?: TestFigure;
  /** The smallest difference that would matter, ms. */
  readonly smallestMs?: number;
  /** Standard deviation of the difference of neighbouring runs from which the pairs were worked out, ms. */
  readonly spreadMs?: number;
  readonly lapsARun?: number;
  readonly pairsPlanned: number;
  /** The fraction of tests without any difference that claim one. */
  readonly level: number;
  readonly seed: number;
  /** The order inside each pair, fixed when drawn. `runA` and `runB` only in old rows, whose runs do not name their test. */
  readonly pairs: readonly { readonly first: "A" | "B"; readonly runA?: Id; readonly runB?: Id }[];
  /** When it was over, all pairs driven or not. */
  readonly endedAt?: number;
  /** The setting the driver kept. */
  readonly kept?: "A" | "B";
}

export const brakings = ["early", "right", "late"] as const;
export type Braking = (typeof brakings)[number];
export const throttles = ["early", "right", "late", "twice"] as const;
export type Throttle = (typeof throttles)[number];

/** What a replay showed at one corner. */
export interface ReviewedCorner {
  readonly number: number;
  /** Metres left unused; below zero over the edge. */
  readonly entry?: number;
  readonly apex?: number;
  readonly exit?: number;
  readonly braking?: Braking;
  readonly throttle?: Throttle;
  readonly isOffLine?: true;
  readonly note?: string;
}

/** What a replay showed at the corners of one lap, or, without one named, of the usual lap. */
export interface CornerReview extends Stamped {
  readonly comboId: Id;
  readonly sessionId?: Id;
  readonly lapId?: Id;
  readonly on: CalendarDate;
  readonly corners: readonly ReviewedCorner[];
}

/** The driver's preferences: one row, with a fixed id, so that two copies merge into one. */
export interface Preferences extends Stamped {
  /** Decimals of the simulator's display, for times typed as digits only. */
  readonly displayDecimals: 1 | 2 | 3;
  /** What `+0.6` is relative to. */
  readonly relativeTo: "lap" | "pb" | "target";
  /** Hour at which a practice day begins. */
  readonly dayStartsAt: number;
  /** First laps of a run that do not count as pace laps, 0 to 3. */
  readonly settlingLaps: 0 | 1 | 2 | 3;
  /** Margin of the best lap, in percent. */
  readonly marginPercent: number;
}

/** The tables of a logbook and the rows in them. */
export interface Tables {
  readonly preferences: Preferences;
  readonly cars: Car;
  readonly tracks: Track;
  readonly layouts: Layout;
  readonly combos: Combo;
  readonly pages: Page;
  readonly references: ReferenceLap;
  readonly sessions: Session;
  readonly runs: Run;
  readonly rigs: RigSettings;
  readonly targets: Target;
  readonly forecasts: Forecast;
  readonly rigTests: RigTest;
  readonly cornerReviews: CornerReview;
  readonly plans: Plan;
}
export type TableName = keyof Tables;
/** In the order in which a backup holds them. */
export const tableNames = [
  "preferences",
  "cars",
  "tracks",
  "layouts",
  "combos",
  "pages",
  "references",
  "sessions",
  "runs",
  "rigs",
  "targets",
  "forecasts",
  "rigTests",
  "cornerReviews",
  "plans",
] as const satisfies readonly TableName[];
