import {
  type Corner,
  cornersOfSector,
  type Drill,
  type DrillCount,
  formatLapTime,
  type Id,
  type PlanCheck,
  type PlannedRun,
} from "#domain";
import type { Because, CornerTask, CountedHabit, DraftLine, PlanRule } from "#stats";
import { hundredths, sayAmount, thousandths } from "./amount.ts";
import { sayCorners } from "./cornersSay.ts";
import { counted } from "./counted.ts";
import { sayWhy } from "./planWhy.ts";
import { targetFigure } from "./targets.ts";

const anywhere = "room to spare at the edges";
const onlyTheCount = "only whether it works, not the time";

interface DrillWords {
  readonly name: string;
  /** What is counted: tries that worked. */
  readonly good: string;
  /** How one try went, well and not, on a key. */
  readonly keys: readonly [worked: string, not: string];
}

/** What each drill is called, and how its tries are told. */
export const drillWords: Readonly<Record<Drill, DrillWords>> = {
  traction: {
    name: "Exits without wheelspin",
    good: "exits without wheelspin",
    keys: ["No wheelspin", "Wheelspin"],
  },
  braking: { name: "Stops at the mark", good: "stops at the mark", keys: ["At the mark", "Missed"] },
  "half throttle": {
    name: "Laps at half throttle",
    good: "laps at half throttle without lifting",
    keys: ["No lift", "Lifted"],
  },
  kerb: {
    name: "One car’s width from the kerb",
    good: "passes one car’s width from the kerb",
    keys: ["On the line", "Off it"],
  },
};

/** What was counted of a drill: "7 of 10 stops at the mark" */
export function sayDrillCount({ drill, good, tries }: Pick<DrillCount, "drill" | "good" | "tries">): string {
  return `${good} of ${tries} ${drillWords[drill].good}`;
}

/**
 * A line of a draft as it is told to the driver, and kept with the session.
 * @param corners of the layout, so that a sector is told with the corners known to lie in it
 */
export function writtenLine(line: DraftLine, corners: readonly Corner[] = []): Omit<PlannedRun, "id"> {
  const { rule, kind, laps, effort, corner, sector, drill, rigTest, check, because } = line;
  const attendTo = attendToOf(line, corners);
  return {
    ...{ rule, kind, laps, effort, check },
    purpose: purposeOf(line, corners),
    ...(attendTo !== undefined && { attendTo }),
    goodWhen: sayGoodWhen(line),
    reason: sayWhy(because),
    ...(corner !== undefined && { corner }),
    ...(sector !== undefined && { sector }),
    ...(drill !== undefined && { drill }),
    ...(rigTest !== undefined && { rigTest }),
  };
}

/** All lines of a draft, each under an id of its own. */
export function plannedLines(
  lines: readonly DraftLine[],
  corners: readonly Corner[],
  newId: () => Id,
): readonly PlannedRun[] {
  return lines.map((line) => ({ id: newId(), ...writtenLine(line, corners) }));
}

function purposeOf(line: DraftLine, corners: readonly Corner[]): string {
  const { rule, kind, corner, sector, drill, because } = line;
  switch (rule) {
    case "after a break":
      return "Find the way back in";
    case "warm-up":
      return "Warm up";
    case "learn the layout":
      if (kind === "warm-up") return "Learn the way round";
      return line.effort === "learning" ? "Clean laps, no hurry" : "First laps to measure";
    case "rig test":
      return "The next run of the rig test";
    case "again":
      return `Corner ${corner} once more`;
    case "mistakes":
      return corner === undefined ? "Clean laps" : `Clean laps, corner ${corner} above all`;
    case "corner":
      return `Corner ${corner}`;
    case "drill":
      return drill === undefined ? "Drill" : sayDrill(drill, corner);
    case "repeatability":
      return "Equal laps";
    case "runs alike":
      return "A run like your fastest";
    case "pace":
      if (corner !== undefined) return `Faster through corner ${corner}`;
      return sector === undefined ? "Faster laps" : `Faster in ${saySectorWith(sector, corners)}`;
    case "target":
      return because.because === "target"
        ? `${because.best === undefined ? "For the target" : "As near to the target as can be"}: ${targetFigure(because.target)} ${formatLapTime(because.target.value)}`
        : "For the target";
    case "measure":
      return "See what it brought";
    case "race":
      return "A long run";
  }
}

/**
 * What a drill is called: with its corner, where it has one.
 * @example "Stops at the mark, corner 5"
 */
export function sayDrill(drill: Drill, corner: number | undefined): string {
  return `${drillWords[drill].name}${corner === undefined ? "" : `, corner ${corner}`}`;
}

/** "sector 2 (corners 5 to 8)" */
function saySectorWith(sector: number, corners: readonly Corner[]): string {
  const within = cornersOfSector(corners, sector);
  return within.length === 0 ? `sector ${sector}` : `sector ${sector} (${sayCorners(within)})`;
}

/** Advice of rules that say the same of every combo. */
const sameForAll = {
  "after a break": "room to spare everywhere",
  "warm-up": "where you brake",
  again: "the same as last time",
  // A sector may be named behind it.
  repeatability: "the same brake points and kerbs",
  "runs alike": "fuel, tyres and line as in your fastest run",
  pace: "one lap of the replay from outside first, then that line",
  measure: "nothing new",
  race: "the last laps as the first ones",
} as const satisfies Partial<Readonly<Record<PlanRule, string>>>;

/** While the way round is looked for, and once it is known. */
const learning = ["a mark to brake at for every corner", "the same marks every lap"] as const;

const isSameForAll = (rule: PlanRule): rule is keyof typeof sameForAll => rule in sameForAll;

/**
 * Whether what is to be attended to is what the rule says, and not what the driver wrote instead. The one thing of a target is
 * always the driver's; that there is one is the advice.
 */
export function isOurAdvice(
  rule: PlanRule,
  { attendTo, corner }: Pick<PlannedRun, "attendTo" | "corner">,
): boolean {
  if (attendTo === undefined || rule === "target") return true;
  if (rule === "repeatability" && attendTo.startsWith(`${sameForAll[rule]},`)) return true;
  return adviceOf(rule, corner).includes(attendTo);
}

/** All that a rule ever says. */
function adviceOf(rule: PlanRule, corner: number | undefined): readonly string[] {
  if (isSameForAll(rule)) return [sameForAll[rule]];
  if (rule === "learn the layout") return learning;
  return corner === undefined ? [anywhere, onlyTheCount] : tasksAt(corner);
}

/** All that is ever told to do at a corner. */
function tasksAt(corner: number): readonly string[] {
  return [
    ...(["early", "late"] as const).map((what) => brakingTask({ what }, corner)),
    ...(["early", "late", "twice"] as const).map((what) => throttleTask({ what }, corner)),
    ...(["entry", "apex", "exit"] as const).map((at) => gapTask(at, corner)),
    ...(["room", "look"] as const).map((todo) => todoAt(corner, { do: todo })),
    onlyTheCount,
  ];
}

/** The one thing to attend to; undefined where there is none to name. */
function attendToOf(line: DraftLine, corners: readonly Corner[]): string | undefined {
  const { rule, because, corner, sector, drill } = line;
  switch (rule) {
    case "learn the layout":
      return learning[line.kind === "warm-up" ? 0 : 1];
    case "mistakes":
      return corner === undefined ? anywhere : todoAt(corner, { do: "room" });
    case "corner":
    case "drill":
      return sayCornerTask(because) ?? (drill && onlyTheCount);
    case "repeatability":
      return `${sameForAll[rule]}${sector === undefined ? "" : `, ${saySectorWith(sector, corners)} above all`}`;
    case "target":
      return because.because === "target" ? because.target.process : undefined;
    case "rig test":
      return undefined;
    default:
      return sameForAll[rule];
  }
}

/** What to do at a corner, from what was counted there; undefined where nothing was. */
function sayCornerTask(because: Because): string | undefined {
  switch (because.because) {
    case "braking":
      return brakingTask(because.seen, because.corner);
    case "throttle":
      return throttleTask(because.seen, because.corner);
    case "gap":
      return gapTask(because.gap.at, because.corner);
    case "corner":
      return todoAt(because.corner, because.todo);
    default:
      return undefined;
  }
}

function todoAt(corner: number, todo: CornerTask): string {
  switch (todo.do) {
    case "brake":
      return brakingTask(todo.seen, corner);
    case "room":
      return `room to spare at corner ${corner}`;
    case "line":
      return gapTask(todo.gap.at, corner);
    case "look":
      return `corner ${corner}, and all else as it is`;
  }
}

function brakingTask({ what }: Pick<CountedHabit<"early" | "late">, "what">, corner: number): string {
  return what === "late" ? `brake earlier for corner ${corner}` : `brake later for corner ${corner}`;
}

function throttleTask(
  { what }: Pick<CountedHabit<"early" | "late" | "twice">, "what">,
  corner: number,
): string {
  if (what === "twice") return `one press of the throttle out of corner ${corner}, no lift`;
  return what === "early"
    ? `a moment’s wait with the throttle at corner ${corner}`
    : `the throttle a moment sooner at corner ${corner}`;
}

function gapTask(at: "entry" | "apex" | "exit", corner: number): string {
  if (at === "entry") return `begin corner ${corner} from the outer edge`;
  return at === "apex"
    ? `touch the inner edge of corner ${corner}`
    : `let the car run out to the edge of corner ${corner}`;
}

/**
 * When a run has worked.
 * @example "7 of 8 laps are clean"
 */
export function sayGoodWhen({
  check,
  laps = 0,
  corner,
  sector,
  drill,
}: {
  readonly check: PlanCheck;
  readonly laps?: number | undefined;
  readonly corner?: number | undefined;
  readonly sector?: number | undefined;
  readonly drill?: Drill | undefined;
}): string {
  const { figure, value = 0 } = check;
  switch (figure) {
    case "clean":
      return value >= laps
        ? `all ${counted(laps, "lap")} clean`
        : `${value} of ${counted(laps, "lap")} clean`;
    case "usual":
      return `usual lap ${formatLapTime(value, 2)} or under`;
    case "best":
      return `best lap ${formatLapTime(value)} or under`;
    case "scatter":
      return `laps differ by ${sayAmount(value, hundredths)} or less`;
    case "corner":
      return value === 0
        ? `no mistake at corner ${corner}`
        : `at most ${counted(value, "mistake")} at corner ${corner}`;
    case "sector":
      return `sector ${sector} usually ${sayAmount(value, thousandths)} or under`;
    case "drill":
      return `${Math.round(value / 100)} of 10 ${drill === undefined ? "work" : drillWords[drill].good}`;
    case "driven":
      return laps === 0 ? "driven" : `${counted(laps, "lap")} driven`;
  }
}
