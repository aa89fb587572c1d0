import {
  type FieldProblem,
  type FormReading,
  type Id,
  leastForSpread,
  longestName,
  longestText,
  type RigSettings,
  type TestFigure,
} from "#domain";
import { type Measure, readMeasure, tooLong } from "#entry";
import { leastPairs, testLevel } from "#stats";
import { askTest, type SaidSides } from "#words";
import { recordFrom } from "../recordFrom.ts";
import type { RigField } from "../rigFields.ts";
import { storedIn, textKey } from "../rigTexts.ts";
import { saidOf } from "../rigWords.ts";

/** A rig test as it is being planned. What is null was not touched: what is offered stands there. */
export interface TypedPlan {
  readonly comboId: Id | null;
  /** What differs: a value of the rig, or something in words. */
  readonly differs: "value" | "words";
  /** The value: `textKey` of its field, empty while none is picked. */
  readonly field: string;
  /** The value as it is now, where no record says it, and the one to be tried. */
  readonly valueA: string;
  readonly valueB: string;
  readonly wordsA: string;
  readonly wordsB: string;
  readonly figure: TestFigure;
  readonly smallest: string | null;
  readonly laps: string;
  readonly pairs: string | null;
  readonly question: string | null;
}

export const blankPlan: TypedPlan = {
  comboId: null,
  differs: "value",
  field: "",
  valueA: "",
  valueB: "",
  wordsA: "",
  wordsB: "",
  figure: "usual",
  smallest: null,
  laps: "6",
  pairs: null,
  question: null,
};

/** The two settings of a test, as its row holds them. */
export interface PlannedSides {
  readonly sayA: string;
  readonly sayB: string;
  readonly field?: string;
  readonly valueA?: string | number;
  readonly valueB?: string | number;
}

type SideKey = "field" | "valueA" | "valueB" | "wordsA" | "wordsB";
type Problems<K extends string> = { [key in K]?: FieldProblem | undefined };

const smallestMeasure: Measure = { name: "Smallest difference", unit: "s", least: 0.01, most: 60 };
const lapsMeasure: Measure = {
  name: "Laps a run",
  unit: "",
  least: leastForSpread,
  most: 200,
  isWhole: true,
};
const pairsMeasure: Measure = {
  name: "Pairs",
  unit: "",
  least: leastPairs(testLevel),
  most: 200,
  isWhole: true,
};

const msASecond = 1000;

/** A smallest difference as the field shows it: "0.12". Never 0, which would be no difference. */
export function writeSmallest(ms: number): string {
  return (Math.max(10, Math.round(ms / 10) * 10) / msASecond).toFixed(2);
}

/** What the number of pairs is worked out from: as far as it can be read. */
export function readEffort(typed: TypedPlan, offeredMs: number | undefined) {
  const smallest = readNumber(
    typed.smallest ?? (offeredMs === undefined ? "" : writeSmallest(offeredMs)),
    smallestMeasure,
  );
  const laps = readNumber(typed.laps, lapsMeasure);
  const pairs = typed.pairs === null ? undefined : readNumber(typed.pairs, pairsMeasure);
  return { smallest, laps, pairs };
}

/** What differs between A and B, or what is wrong with it. */
export function readSides(
  typed: TypedPlan,
  field: RigField | undefined,
  rig: RigSettings | undefined,
): FormReading<PlannedSides, SideKey> {
  return typed.differs === "words" ? inWords(typed) : inValues(typed, field, rig);
}

function inWords({ wordsA, wordsB }: TypedPlan): FormReading<PlannedSides, SideKey> {
  const problems: Problems<SideKey> = {};
  const sayA = wordsOf("wordsA", wordsA, problems);
  const sayB = wordsOf("wordsB", wordsB, problems);
  if (sayA !== "" && sayA === sayB)
    problems.wordsB = { wrong: "B is the same as A.", right: "Say what is different." };
  return done({ sayA, sayB }, problems);
}

function inValues(
  typed: TypedPlan,
  field: RigField | undefined,
  rig: RigSettings | undefined,
): FormReading<PlannedSides, SideKey> {
  const problems: Problems<SideKey> = {};
  if (field === undefined) {
    problems.field = { wrong: "No value is chosen.", right: "Choose what is different between A and B." };
    return { ok: false, problems };
  }
  const valueA = (rig && storedIn(rig, field)) ?? readValue("valueA", typed.valueA, field, problems);
  const valueB = readValue("valueB", typed.valueB, field, problems);
  if (valueA === undefined || valueB === undefined) return { ok: false, problems };
  if (valueA === valueB)
    problems.valueB = { wrong: "B is the same as A.", right: "Type the value that is to be tried." };
  const say = (value: string | number) => `${field.name} ${saidValue(field, value)}`;
  const sides = { sayA: say(valueA), sayB: say(valueB), field: textKey(field), valueA, valueB };
  return done(sides, problems);
}

/** A value as a record would say it: "54 %". */
export function saidValue(field: RigField, value: string | number): string {
  const kind = field.screens?.find((screen) => screen !== undefined);
  const row = recordFrom(undefined, { from: "", screen: kind === undefined ? {} : { kind } });
  const part = { ...row[field.part], [field.key]: value };
  return saidOf({ ...row, [field.part]: part }, field) ?? String(value);
}

function readValue(
  key: "valueA" | "valueB",
  text: string,
  field: RigField,
  problems: Problems<SideKey>,
): string | number | undefined {
  if (field.kind === "measure") {
    const reading = readMeasure(text, field.measure);
    if (!reading.ok) problems[key] = reading.problem;
    else if (reading.value !== undefined) return reading.value;
    else problems[key] = { wrong: "No value stands there.", right: `Type the ${field.name}.` };
    return undefined;
  }
  const isChosen = field.kind === "words" ? text.trim() !== "" : text !== "";
  if (!isChosen) problems[key] = { wrong: "No value stands there.", right: `Say the ${field.name}.` };
  return isChosen ? wordsOf(key, text, problems) : undefined;
}

function wordsOf(key: SideKey, text: string, problems: Problems<SideKey>): string {
  const said = text.trim();
  if (said === "") problems[key] = { wrong: "Nothing stands there.", right: "A few words are enough." };
  const problem = tooLong(said, longestName);
  if (problem !== undefined) problems[key] = problem;
  return said;
}

function done<K extends string>(value: PlannedSides, problems: Problems<K>): FormReading<PlannedSides, K> {
  return Object.keys(problems).length > 0 ? { ok: false, problems } : { ok: true, value };
}

function readNumber(text: string, measure: Measure) {
  const reading = readMeasure(text, measure);
  if (!reading.ok) return { problem: reading.problem };
  if (reading.value !== undefined) return { value: reading.value };
  const { name, least, unit } = measure;
  return {
    problem: { wrong: "No number stands there.", right: `${name}: at least ${least}${unit && ` ${unit}`}.` },
  };
}

/** A plan that can be stored. */
export interface ReadPlan extends PlannedSides {
  readonly question: string;
  readonly figure: TestFigure;
  readonly smallestMs: number;
  readonly lapsARun: number;
  readonly pairs: number;
}

interface PlanContext {
  readonly field: RigField | undefined;
  /** The record in force. */
  readonly rig: RigSettings | undefined;
  readonly comboName: string;
  readonly offeredMs: number | undefined;
  /** The number of pairs that is offered. */
  readonly offeredPairs: number | undefined;
  /** A test of the combo is not over yet. */
  readonly isTaken: boolean;
}

/** The question as the title asks it: the one typed, else one made from what differs. */
export function questionOf(typed: TypedPlan, sides: SaidSides | undefined, comboName: string): string {
  return (
    typed.question ??
    (sides === undefined
      ? ""
      : askTest({ ...sides, figure: typed.figure, differs: typed.differs }, comboName))
  );
}

/** Reads a plan: the test, or what is wrong in which field. */
export function readPlan(
  typed: TypedPlan,
  context: PlanContext,
): FormReading<ReadPlan, keyof TypedPlan & string> {
  const sides = readSides(typed, context.field, context.rig);
  const { smallest, laps, pairs } = readEffort(typed, context.offeredMs);
  const asked = sides.ok ? sides.value : undefined;
  const own = questionOf(typed, asked, context.comboName).trim();
  const question = own === "" ? questionOf({ ...typed, question: null }, asked, context.comboName) : own;
  const longQuestion = tooLong(question, longestText);
  const count = pairs === undefined ? context.offeredPairs : pairs.value;
  const problems: Problems<keyof TypedPlan & string> = {
    ...(context.isTaken && {
      comboId: { wrong: "A rig test of this combo is not over yet.", right: "Finish it or stop it first." },
    }),
    ...(!sides.ok && sides.problems),
    ...(smallest.problem && { smallest: smallest.problem }),
    ...(laps.problem && { laps: laps.problem }),
    ...(pairs?.problem && { pairs: pairs.problem }),
    ...(count === undefined &&
      pairs === undefined && {
        pairs: { wrong: "No number stands there.", right: `At least ${pairsMeasure.least} pairs.` },
      }),
    ...(longQuestion && { question: longQuestion }),
  };
  if (
    !sides.ok ||
    smallest.value === undefined ||
    laps.value === undefined ||
    count === undefined ||
    Object.keys(problems).length > 0
  )
    return { ok: false, problems };
  return {
    ok: true,
    value: {
      ...sides.value,
      question,
      figure: typed.figure,
      smallestMs: Math.round(smallest.value * msASecond),
      lapsARun: laps.value,
      pairs: count,
    },
  };
}
