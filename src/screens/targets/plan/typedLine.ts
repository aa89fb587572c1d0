import {
  type Corner,
  canonicalText,
  cornerRanges,
  type Drill,
  type Effort,
  type FieldProblem,
  type FormReading,
  formatLapTime,
  longestName,
  type PlanCheck,
  type PlanFigure,
  type PlannedRun,
  type RunKind,
} from "#domain";
import { type Measure, readMeasure, readTime, tooLong } from "#entry";
import { sayDrill, sayGoodWhen } from "#words";

/** A run of the plan as it is being typed. */
export interface TypedLine {
  /** The run as it was when its change began; null where it is a new one. */
  readonly seen: PlannedRun | null;
  readonly purpose: string;
  readonly kind: RunKind;
  readonly laps: string;
  readonly effort: Effort;
  readonly attendTo: string;
  readonly corner: string;
  readonly sector: string;
  /** What is counted in a drill. */
  readonly drill: Drill | "nothing";
  /** By which figure it is told, or in the driver's own words. */
  readonly figure: PlanFigure | "words";
  readonly value: string;
  readonly words: string;
}

const blank: TypedLine = {
  seen: null,
  purpose: "",
  kind: "pace",
  laps: "8",
  effort: "full",
  attendTo: "",
  corner: "",
  sector: "",
  drill: "nothing",
  figure: "clean",
  value: "7",
  words: "",
};

/** A new run, and a new drill: as they stand in the form before anything is typed. */
export const newRun = blank;
export const newDrill: TypedLine = {
  ...blank,
  kind: "drill",
  laps: "10",
  effort: "learning",
  drill: "braking",
  figure: "drill",
  value: "8",
};

const A_SECOND = 1000;
/** A drill is told of ten tries, and kept in thousandths. */
const TENTH = 100;

/** A run that is in the plan, as it stands in the form. */
export function typedOf(line: PlannedRun): TypedLine {
  const { purpose, kind = "pace", laps, effort = "full", attendTo = "", corner, sector } = line;
  const { check, goodWhen = "", drill = "nothing" } = line;
  return {
    seen: line,
    ...{ purpose, kind, effort, attendTo, drill },
    laps: laps === undefined ? "" : String(laps),
    corner: corner === undefined ? "" : String(corner),
    sector: sector === undefined ? "" : String(sector),
    figure: check?.figure ?? "words",
    value: check === undefined ? "" : writeValue(check),
    words: check === undefined ? goodWhen : "",
  };
}

function writeValue({ figure, value }: PlanCheck): string {
  if (value === undefined) return "";
  if (figure === "usual" || figure === "best") return formatLapTime(value);
  if (figure === "scatter" || figure === "sector") return String(Math.round(value) / A_SECOND);
  return String(figure === "drill" ? value / TENTH : value);
}

/** Whether anything was typed since the form opened. */
export function isTouched(typed: TypedLine): boolean {
  const { seen } = typed;
  const starts = seen === null ? [newRun, newDrill] : [typedOf(seen)];
  return !starts.some((start) => canonicalText(start) === canonicalText(typed));
}

interface LineContext {
  readonly corners: readonly Corner[];
  /** The usual lap, from which short forms are completed. */
  readonly usual: number | undefined;
  readonly displayDecimals: number;
}

type Key = keyof TypedLine & string;
type Problems = Partial<Record<Key, FieldProblem>>;
/** Reads a number out of a field, or says what is wrong there. */
type ReadNumber = (key: Key, text: string, measure: Measure, isNeeded: boolean) => number | undefined;

const measures = {
  laps: { name: "Laps", unit: "", least: 1, most: 200, isWhole: true },
  corner: { name: "Corner", unit: "", ...cornerRanges.number, isWhole: true },
  sector: { name: "Sector", unit: "", ...cornerRanges.sector, isWhole: true },
  scatter: { name: "How far laps differ", unit: "s", stored: A_SECOND, least: 0.01, most: 60 },
  sectorTime: { name: "Time in the sector", unit: "s", stored: A_SECOND, least: 0.1, most: 3600 },
  mistakes: { name: "Mistakes", unit: "", least: 0, most: 99, isWhole: true },
  tries: { name: "Tries that work", unit: "", least: 1, most: 10, isWhole: true },
} as const satisfies Readonly<Record<string, Measure>>;

/** Reads what was typed: the run, or what is wrong in which field. What the figures said of it stays while it is the same run. */
export function readLine(
  typed: TypedLine,
  context: LineContext,
): FormReading<Omit<PlannedRun, "id">, keyof TypedLine> {
  const problems: Problems = {};
  const number: ReadNumber = (key, text, measure, isNeeded) => {
    const reading = readMeasure(text, measure);
    if (!reading.ok) problems[key] = reading.problem;
    else if (reading.value !== undefined) return reading.value;
    else if (isNeeded)
      problems[key] = { wrong: "No number stands there.", right: `${measure.name}: type how many.` };
    return undefined;
  };
  const { kind, effort, figure, seen } = typed;
  const drill = kind === "drill" && typed.drill !== "nothing" ? typed.drill : undefined;
  const laps = number("laps", typed.laps, measures.laps, true);
  const corner = number("corner", typed.corner, measures.corner, figure === "corner");
  const sector = number("sector", typed.sector, measures.sector, figure === "sector");
  const { corners } = context;
  if (corner !== undefined && corners.length > 0 && corners.every((one) => one.number !== corner))
    problems.corner = {
      wrong: `There is no corner ${corner} on this layout.`,
      right: `Its corners are numbered up to ${Math.max(...corners.map((one) => one.number))}.`,
    };
  if (figure === "drill" && drill === undefined)
    problems.figure = { wrong: "Only a drill is counted.", right: "Choose another figure." };
  const check = readCheck(typed, laps, context, number, problems);
  const attendTo = typed.attendTo.trim();
  const words = figure === "words" ? typed.words.trim() : "";
  const purpose = typed.purpose.trim() || (drill === undefined ? "" : sayDrill(drill, corner));
  if (purpose === "")
    problems.purpose = { wrong: "Nothing stands there.", right: "Say in a few words what the run is for." };
  const texts = { purpose, attendTo, words };
  for (const key of ["purpose", "attendTo", "words"] as const) {
    const problem = tooLong(texts[key], longestName);
    if (problem !== undefined) problems[key] = problem;
  }
  if (laps === undefined || Object.keys(problems).length > 0) return { ok: false, problems };
  const about = {
    ...(corner !== undefined && { corner }),
    ...(sector !== undefined && { sector }),
    ...(drill !== undefined && { drill }),
  };
  const goodWhen = check === undefined ? words : sayGoodWhen({ check, laps, ...about });
  const line: Omit<PlannedRun, "id"> = {
    ...{ purpose, kind, laps, effort, ...about },
    ...(attendTo !== "" && { attendTo }),
    ...(goodWhen !== "" && { goodWhen }),
    ...(check && { check }),
  };
  return { ok: true, value: seen !== null && isSameRun(seen, line) ? { ...saidOf(seen), ...line } : line };
}

function readCheck(
  { figure, value }: TypedLine,
  laps: number | undefined,
  { usual, displayDecimals }: LineContext,
  number: ReadNumber,
  problems: Problems,
): PlanCheck | undefined {
  if (figure === "words") return undefined;
  const of = (read: number | undefined) => (read === undefined ? undefined : { figure, value: read });
  switch (figure) {
    case "driven":
      return { figure };
    case "clean":
      return of(
        number(
          "value",
          value,
          { name: "Clean laps", unit: "", least: 1, most: laps ?? 200, isWhole: true },
          true,
        ),
      );
    case "usual":
    case "best": {
      const time = readTime(value, { nearMs: usual, displayDecimals });
      if (time.ok) return { figure, value: time.ms };
      problems.value = time.problem;
      return undefined;
    }
    case "scatter":
      return of(number("value", value, measures.scatter, true));
    case "sector":
      return of(number("value", value, measures.sectorTime, true));
    case "corner":
      return of(number("value", value, measures.mistakes, true));
    case "drill": {
      const good = number("value", value, measures.tries, true);
      return of(good === undefined ? undefined : good * TENTH);
    }
  }
}

/** Whether a changed run is still about the same thing, so that its rule and its reason hold. */
function isSameRun(seen: PlannedRun, line: Omit<PlannedRun, "id">): boolean {
  return (
    (seen.kind ?? "pace") === line.kind &&
    seen.corner === line.corner &&
    seen.sector === line.sector &&
    seen.drill === line.drill &&
    seen.check?.figure === line.check?.figure
  );
}

function saidOf({ rule, reason, rigTest }: PlannedRun) {
  return {
    ...(rule !== undefined && { rule }),
    ...(reason !== undefined && { reason }),
    ...(rigTest !== undefined && { rigTest }),
  };
}
