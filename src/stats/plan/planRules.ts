import {
  type CalendarDate,
  type Drill,
  type Effort,
  type Id,
  isTimeKind,
  type PlanCheck,
  type RunKind,
} from "#domain";
import type { Span } from "#physics";
import { BREAK_DAYS } from "../weeks/longestPause.ts";
import { checkAsTold } from "./asTold.ts";
import type { CountedHabit, PlanCorner, PlanFacts, TriedLine } from "./planFacts.ts";

/** The rules, in the order in which a plan is driven. */
export type PlanRule =
  | "after a break"
  | "warm-up"
  | "learn the layout"
  | "rig test"
  | "again"
  | "mistakes"
  | "corner"
  | "drill"
  | "repeatability"
  | "runs alike"
  | "pace"
  | "target"
  | "measure"
  | "race";

/**
 * The one thing to do at a corner. `brake`: as most reviews counted · `room`: too many mistakes there to ask for more · `line`: a
 * gap that a replay showed · `look`: nothing was counted
 */
export type CornerTask =
  | { readonly do: "brake"; readonly seen: CountedHabit<"early" | "late"> }
  | { readonly do: "room" | "look" }
  | { readonly do: "line"; readonly gap: NonNullable<PlanCorner["gap"]> };

/** Why a line is there, as data: its sentence is made in words. Times in ms a lap. */
export type Because =
  | { readonly because: "break"; readonly days: number; readonly last: PlanFacts["lastBreak"] }
  | { readonly because: "first laps" }
  | {
      readonly because: "slower overnight";
      readonly ms: number;
      readonly low: number;
      readonly high: number;
      readonly pairs: number;
    }
  | { readonly because: "new here"; readonly laps: number }
  | { readonly because: "rig test waits"; readonly runs: number }
  | { readonly because: "went well"; readonly line: TriedLine }
  | { readonly because: "not met"; readonly came: TriedLine["came"] }
  | {
      readonly because: "mistakes";
      readonly ms: number | undefined;
      readonly balance: number | undefined;
      readonly against: PlanFacts["against"];
      readonly lost: number;
      readonly laps: number;
      readonly evenings: number;
      readonly corner: { readonly number: number; readonly count: number } | undefined;
    }
  | {
      readonly because: "corner";
      readonly corner: number;
      readonly worth: Span;
      readonly mistakes: number;
      readonly laps: number;
      readonly todo: CornerTask;
    }
  | { readonly because: "braking"; readonly corner: number; readonly seen: CountedHabit<"early" | "late"> }
  | {
      readonly because: "throttle";
      readonly corner: number;
      readonly seen: CountedHabit<"early" | "late" | "twice">;
    }
  | { readonly because: "gap"; readonly corner: number; readonly gap: NonNullable<PlanCorner["gap"]> }
  | {
      readonly because: "uneven";
      readonly evenings: number;
      readonly ms: number;
      readonly balance: number;
      readonly against: PlanFacts["against"];
      readonly sector: number | undefined;
    }
  | {
      readonly because: "runs differ";
      readonly evenings: number;
      readonly ms: number;
      readonly balance: number;
      readonly against: PlanFacts["against"];
      /** Shares of the variance, 0 to 1. */
      readonly runs: number;
      readonly laps: number;
    }
  | {
      readonly because: "pace";
      readonly evenings: number;
      readonly ms: number;
      readonly balance: number;
      readonly against: PlanFacts["against"];
      readonly sector: number | undefined;
      readonly corner: number | undefined;
    }
  | {
      readonly because: "target";
      readonly target: NonNullable<PlanFacts["target"]>;
      /** The best lap so far, where the target is a best lap too far from it for one evening. */
      readonly best: number | undefined;
    }
  | {
      readonly because: "see the effect";
      readonly usual: number | undefined;
      readonly on: CalendarDate | undefined;
    }
  | { readonly because: "races"; readonly races: number };

/** A line of a draft. */
export interface DraftLine {
  readonly rule: PlanRule;
  readonly kind: RunKind;
  readonly laps: number;
  readonly effort: Effort;
  readonly corner?: number;
  /** From 1. */
  readonly sector?: number;
  readonly drill?: Drill;
  readonly rigTest?: Id;
  readonly check: PlanCheck;
  readonly because: Because;
}

/** One row of the table: when a rule speaks, and the forms of the line it proposes, the first choice first. */
export interface Rule {
  readonly rule: PlanRule;
  /** Opening, focus, or what comes after it. */
  readonly part: "opening" | "first" | "focus" | "drill" | "close" | "last";
  /** What it would win back, ms a lap; only of a focus: the largest speaks first. */
  readonly worth?: (facts: PlanFacts) => number;
  /** Forms of its line where it speaks; none where it does not. */
  readonly lines: (facts: PlanFacts) => readonly DraftLine[];
}

/** Laps of a run that a figure is told from, and of one that is only for the hands. Common practice, no source. */
const RUN = 8;
export const SHORT_RUN = 5;
const WARM_UP = 3;
const LONG_WARM_UP = 6;
/** One lap in so many lost puts mistakes before all else. */
const LOST_FIRST = 6;
/** A corner is named for what it holds of pace from a quarter of it on, and from so many ms. */
const SHARE_OF_PACE = 0.25;
const LEAST_CORNER_MS = 30;
/** Mistakes there from which a corner is named. */
const LEAST_AT_CORNER = 3;
/** Fewer sessions and laps on a combo that was never driven before are for learning the way. */
const NEW_SESSIONS = 2;
const NEW_LAPS = 20;
/** A target's date is near within so many days. */
const NEAR_DAYS = 21;
/** As much of a lap as one evening may be asked to take off the best so far. Our own choice. */
const ONE_EVENING = 0.001;
/** Eight tries of ten. */
const MOST_TRIES = 800;
/** Seven laps of eight. */
const ALL_BUT = 1;

const clean = (of: number, but = 0): PlanCheck => ({ figure: "clean", value: of - but });

/** Whether the combo is new: neither driven often on this page nor on an older one. */
export function isNewCircuit({ driven }: PlanFacts): boolean {
  return driven.before === 0 && driven.sessions < NEW_SESSIONS && driven.laps < NEW_LAPS;
}

/** Whether so many laps are lost that nothing else can be worked on. */
export function isLosingLaps({ lost: { laps, lost } }: PlanFacts): boolean {
  return laps > 0 && lost * LOST_FIRST >= laps;
}

/** The corner where most mistakes were, if there are enough to name it. */
function cornerOfMistakes({ corners }: PlanFacts): PlanCorner | undefined {
  const [most] = corners
    .filter(({ mistakes }) => mistakes >= LEAST_AT_CORNER)
    .toSorted((a, b) => b.mistakes - a.mistakes || a.number - b.number);
  return most;
}

/** The corner worth most, where that is enough to name it. */
function worthiest({ corners }: PlanFacts): (PlanCorner & { readonly worth: Span }) | undefined {
  const [first] = corners
    .flatMap((corner) =>
      corner.worth !== undefined && corner.worth.mid >= LEAST_CORNER_MS
        ? [{ ...corner, worth: corner.worth }]
        : [],
    )
    .toSorted((a, b) => b.worth.mid - a.worth.mid || a.number - b.number);
  return first;
}

/**
 * The corner that the answer about corners names first, where enough of what pace costs is road left unused there; undefined
 * where it is not: another corner beside it would be a second answer.
 */
function cornerOfPace({ account, corners: [first] }: PlanFacts): number | undefined {
  const { unused = 0 } = first ?? {};
  const isEnough = unused >= LEAST_CORNER_MS && unused >= (account?.pace ?? 0) * SHARE_OF_PACE;
  return isEnough ? first?.number : undefined;
}

/** Whether a best lap is further than a thousandth of the lap from the best so far: too much to ask of one evening. */
function isFar(target: number, best: number): boolean {
  return best - target > best * ONE_EVENING;
}

/** Whether runs of one evening differ more than laps of one run do. */
function areRunsApart({ spread }: PlanFacts): boolean {
  return spread.known && spread.value.runs > spread.value.laps;
}

/**
 * What the reviews counted of braking, where it is advice: that it was early is none where the car leaves the road, for it would
 * be to brake later there.
 */
function brakingAdvice({ braking, mistakes }: PlanCorner): PlanCorner["braking"] {
  return braking?.what === "early" && mistakes > 0 ? undefined : braking;
}

/** Braking late where mistakes are comes before all else; where there are many of them nothing is asked that takes room. */
function taskAt(corner: PlanCorner): CornerTask {
  const { mistakes, gap } = corner;
  const seen = brakingAdvice(corner);
  if (seen?.what === "late" && mistakes > 0) return { do: "brake", seen };
  if (mistakes >= LEAST_AT_CORNER) return { do: "room" };
  if (gap !== undefined) return { do: "line", gap };
  return seen === undefined ? { do: "look" } : { do: "brake", seen };
}

function drillAt(corner: PlanCorner): Pick<DraftLine, "drill" | "because"> | undefined {
  const { number, throttle, gap } = corner;
  const braking = brakingAdvice(corner);
  if (throttle !== undefined)
    return { drill: "traction", because: { because: "throttle", corner: number, seen: throttle } };
  if (braking !== undefined)
    return { drill: "braking", because: { because: "braking", corner: number, seen: braking } };
  return gap && { drill: "kerb", because: { because: "gap", corner: number, gap } };
}

const counted = (corner: PlanCorner, laps: number): readonly DraftLine[] => {
  const what = drillAt(corner);
  if (what === undefined) return [];
  return [
    {
      rule: "drill",
      kind: "drill",
      laps,
      effort: "learning",
      corner: corner.number,
      check: { figure: "drill", value: MOST_TRIES },
      ...what,
    },
  ];
};

/** A drill that was driven and not met, once more. */
const drillAgain = ({ corner, drill, came }: TriedLine): readonly DraftLine[] =>
  drill === undefined
    ? []
    : [
        {
          rule: "drill",
          kind: "drill",
          laps: SHORT_RUN,
          effort: "learning",
          ...(corner !== undefined && { corner }),
          drill,
          check: { figure: "drill", value: MOST_TRIES },
          because: { because: "not met", came },
        },
      ];

/**
 * Every rule, in the order in which their lines are driven. A reader follows it from top to bottom: `draftPlan` takes the first
 * form of each that has not failed twice.
 */
export const rules: readonly Rule[] = [
  {
    rule: "after a break",
    part: "opening",
    lines: ({ daysSince = 0, lastBreak }) =>
      daysSince < BREAK_DAYS
        ? []
        : [
            {
              rule: "after a break",
              kind: "warm-up",
              laps: LONG_WARM_UP,
              effort: "easy",
              check: clean(LONG_WARM_UP),
              because: { because: "break", days: daysSince, last: lastBreak },
            },
          ],
  },
  {
    rule: "warm-up",
    part: "opening",
    lines: ({ overnight }) => {
      const isSlower = overnight.known && overnight.value.low > 0;
      const laps = isSlower ? SHORT_RUN : WARM_UP;
      return [
        {
          rule: "warm-up",
          kind: "warm-up",
          laps,
          effort: "easy",
          check: { figure: "driven" },
          because: isSlower
            ? {
                because: "slower overnight",
                ms: overnight.value.estimate,
                low: overnight.value.low,
                high: overnight.value.high,
                pairs: overnight.value.pairs,
              }
            : { because: "first laps" },
        },
      ];
    },
  },
  {
    rule: "rig test",
    part: "first",
    lines: ({ rigTest }) =>
      rigTest === undefined
        ? []
        : [
            {
              rule: "rig test",
              kind: "pace",
              laps: rigTest.laps,
              effort: "full",
              rigTest: rigTest.id,
              check: clean(SHORT_RUN),
              because: { because: "rig test waits", runs: rigTest.runs },
            },
          ],
  },
  {
    // Practice is no reliable sign of what was learnt (Soderstrom & Bjork 2015): the next evening is.
    rule: "again",
    part: "first",
    lines: ({ tried }) => {
      const line = tried.find(({ rule }) => rule === "corner" || rule === "again");
      if (line === undefined || !line.isGood || line.rule !== "corner" || line.corner === undefined)
        return [];
      return [
        {
          rule: "again",
          kind: "pace",
          laps: SHORT_RUN,
          effort: "brisk",
          corner: line.corner,
          check: { figure: "corner", value: 0 },
          because: { because: "went well", line },
        },
      ];
    },
  },
  {
    rule: "mistakes",
    part: "focus",
    worth: (facts) => (isLosingLaps(facts) ? Number.POSITIVE_INFINITY : (facts.account?.mistakes ?? 0)),
    lines: (facts) => {
      const { account, against, evenings, lost } = facts;
      if (!isLosingLaps(facts) && (account?.mistakes ?? 0) <= 0) return [];
      const corner = cornerOfMistakes(facts);
      const line = {
        rule: "mistakes",
        kind: "pace",
        effort: "learning",
        ...(corner && { corner: corner.number }),
        because: {
          because: "mistakes",
          ms: account && Math.max(0, account.mistakes),
          balance: account?.balance,
          against,
          ...lost,
          evenings,
          corner: corner && { number: corner.number, count: corner.mistakes },
        },
      } as const;
      return [
        { ...line, laps: RUN, check: clean(RUN, ALL_BUT) },
        { ...line, laps: SHORT_RUN, check: clean(SHORT_RUN) },
      ];
    },
  },
  {
    rule: "corner",
    part: "focus",
    worth: (facts) => worthiest(facts)?.worth.mid ?? 0,
    lines: (facts) => {
      const corner = worthiest(facts);
      if (corner === undefined) return [];
      const { number, worth, mistakes, laps } = corner;
      const line = {
        rule: "corner",
        kind: "pace",
        effort: "learning",
        corner: number,
        check: { figure: "corner", value: 0 },
        because: { because: "corner", corner: number, worth, mistakes, laps, todo: taskAt(corner) },
      } as const;
      return [{ ...line, laps: RUN }, { ...line, laps: SHORT_RUN }, ...counted(corner, SHORT_RUN)];
    },
  },
  {
    rule: "runs alike",
    part: "focus",
    worth: (facts) => (areRunsApart(facts) ? (facts.account?.repeatability ?? 0) : 0),
    lines: (facts) => {
      const { account, against, spread, usual } = facts;
      if (account === undefined || !spread.known || usual === undefined || !areRunsApart(facts)) return [];
      const { evenings, runs, laps } = spread.value;
      const all = evenings + runs + laps;
      const line = {
        rule: "runs alike",
        kind: "pace",
        effort: "full",
        check: checkAsTold("usual", usual),
        because: {
          because: "runs differ",
          evenings: facts.evenings,
          ms: account.repeatability,
          balance: account.balance,
          against,
          runs: runs / all,
          laps: laps / all,
        },
      } as const;
      return [
        { ...line, laps: RUN },
        { ...line, laps: SHORT_RUN },
      ];
    },
  },
  {
    rule: "repeatability",
    part: "focus",
    worth: (facts) => (areRunsApart(facts) ? 0 : (facts.account?.repeatability ?? 0)),
    lines: ({ account, against, evenings, scatter, sector }) => {
      if (account === undefined || scatter === undefined || account.repeatability <= 0) return [];
      const line = {
        rule: "repeatability",
        kind: "pace",
        effort: "brisk",
        ...(sector && { sector: sector.sector }),
        check: checkAsTold("scatter", scatter),
        because: {
          because: "uneven",
          evenings,
          ms: account.repeatability,
          balance: account.balance,
          against,
          sector: sector?.sector,
        },
      } as const;
      return [
        { ...line, laps: RUN },
        { ...line, laps: SHORT_RUN },
      ];
    },
  },
  {
    rule: "pace",
    part: "focus",
    worth: ({ account }) => account?.pace ?? 0,
    lines: (facts) => {
      const { account, against, evenings, sector, usual } = facts;
      if (account === undefined || usual === undefined || account.pace <= 0) return [];
      const corner = cornerOfPace(facts);
      const line = {
        rule: "pace",
        kind: "pace",
        effort: "full",
        ...(corner !== undefined && { corner }),
        ...(sector && { sector: sector.sector }),
        check: sector === undefined ? checkAsTold("usual", usual) : checkAsTold("sector", sector.usual),
        because: {
          because: "pace",
          evenings,
          ms: account.pace,
          balance: account.balance,
          against,
          sector: sector?.sector,
          corner,
        },
      } as const;
      return [
        { ...line, laps: RUN },
        { ...line, laps: SHORT_RUN, effort: "learning" },
      ];
    },
  },
  {
    rule: "drill",
    part: "drill",
    lines: ({ corners, tried }) => {
      // What was not met goes on before another is begun; twice is enough (`hasFailedTwice`).
      const last = tried.find(({ drill }) => drill !== undefined);
      const again = last !== undefined && !last.isGood ? drillAgain(last) : [];
      const first = corners.find((one) => drillAt(one) !== undefined);
      return first === undefined ? again : [...again, ...counted(first, SHORT_RUN)];
    },
  },
  {
    rule: "target",
    part: "close",
    lines: ({ target, usual, best }) => {
      if (target === undefined || target.days > NEAR_DAYS) return [];
      if (!isTimeKind(target.kind)) return [];
      const far =
        target.kind === "best" && best !== undefined && isFar(target.value, best) ? best : undefined;
      return [
        {
          rule: "target",
          kind: "pace",
          laps: RUN,
          effort: "full",
          check:
            target.kind === "best"
              ? checkAsTold("best", far ?? target.value)
              : checkAsTold("usual", Math.max(target.value, usual ?? 0)),
          because: { because: "target", target, best: far },
        },
      ];
    },
  },
  {
    rule: "measure",
    part: "close",
    lines: ({ usual, usualOn }) => [
      {
        rule: "measure",
        kind: "pace",
        laps: RUN,
        effort: "full",
        check: usual === undefined ? { figure: "driven" } : checkAsTold("usual", usual),
        because: { because: "see the effect", usual, on: usualOn },
      },
    ],
  },
  {
    rule: "race",
    part: "last",
    lines: ({ races }) =>
      races === 0
        ? []
        : [
            {
              rule: "race",
              kind: "pace",
              laps: RUN + SHORT_RUN,
              effort: "brisk",
              check: clean(RUN + SHORT_RUN, ALL_BUT),
              because: { because: "races", races },
            },
          ],
  },
];
