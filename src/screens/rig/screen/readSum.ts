import type { Fields } from "#db";
import type { CalendarDate, FieldProblem, Figure, FormReading, RigSettings } from "#domain";
import { type ScreenSetup, type ScreenView, screenView, viewSetting } from "#physics";
import { tooTightCurve } from "#words";
import { recordFrom } from "../recordFrom.ts";
import { nameOfScreenField, setupOf } from "../screenView.ts";
import {
  aspectOf,
  looseValueIn,
  readIn,
  type SumMeasure,
  type SumTexts,
  sumMeasures,
  valueIn,
} from "./sumTexts.ts";

type Screen = RigSettings["screen"];
/** What only some screens have. */
const onlyOf: Readonly<Partial<Record<SumMeasure, SumTexts["kind"]>>> = {
  bezel: "three",
  sideAngle: "three",
  radius: "curved",
};

/** Whether a field makes sense for the kind of screen chosen. */
export function isAskedOf(kind: SumTexts["kind"], key: SumMeasure): boolean {
  return onlyOf[key] === undefined || onlyOf[key] === kind;
}

/** What the texts say so far. */
export interface Sum {
  /** The screen as a record holds it, as far as it can be read. */
  readonly screen: Screen;
  /** Names of what is missing for the field of view. */
  readonly missing: readonly string[];
  /** Undefined while something is missing or wrong. */
  readonly setup: ScreenSetup | undefined;
  readonly view: Figure<ScreenView> | undefined;
  /** Of three screens, also before a turn is typed: at which the eye stands square before the side screens, degrees. */
  readonly squareAngle: number | undefined;
  /** What is wrong in a field that is filled in. */
  readonly problems: Readonly<Partial<Record<keyof SumTexts, FieldProblem>>>;
}

/** Reads what is typed; the field of view is the one the record's page works out of the same. */
export function readSum(texts: SumTexts): Sum {
  const { kind, unit } = texts;
  const asked = sumMeasures.filter((key) => isAskedOf(kind, key));
  const problems: Partial<Record<keyof SumTexts, FieldProblem>> = {};
  for (const key of asked) {
    const reading = readIn(texts, key);
    if (!reading.ok) problems[key] = reading.problem;
  }
  if (
    texts.by !== "sides" &&
    texts.shape === "own" &&
    texts.own.trim() !== "" &&
    aspectOf(texts) === undefined
  )
    problems.own = {
      wrong: `“${texts.own.trim()}” is no shape.`,
      right: "Write width to height, such as 64:27.",
    };
  const screen: Screen = {
    kind,
    ...Object.fromEntries(
      asked.flatMap((key) => {
        const value = key === "diagonal" ? undefined : valueIn(texts, key);
        return value === undefined ? [] : [[key, value]];
      }),
    ),
  };
  const { missing, setup } = setupOf(screen);
  const isWrong = asked.some((key) => problems[key] !== undefined);
  const view = setup && !isWrong ? screenView(setup) : undefined;
  if (view?.known === false && "because" in view.reason && view.reason.because === "more than half a circle")
    problems.radius = tooTightCurve(screen.width ?? 0, unit);
  const unknown = missing.filter((key) => problems[key as SumMeasure] === undefined);
  return {
    screen,
    missing: unknown.map((key) => (key === "width" ? "diagonal or width" : nameOfScreenField(key))),
    setup,
    view,
    squareAngle: squareAngleOf(screen),
    problems,
  };
}

/** It depends on everything but the turn itself. */
function squareAngleOf(screen: Screen): number | undefined {
  const { setup } = setupOf({ ...screen, sideAngle: 0 });
  const view = setup && screenView(setup);
  return view?.known ? view.value.sides?.squareAngle : undefined;
}

/** What stands in for a length that is not known, so that something can be drawn: m, degrees. Common practice, no source. */
const standIn = { width: 0.6, eyeDistance: 0.65, sideAngle: 45, radius: 1.5, bezel: 0 } as const;

/** The screens as they are drawn, also of what cannot be; `isWhole`: nothing of them is only taken to be so. */
export function drawnSetup(texts: SumTexts): { readonly setup: ScreenSetup; readonly isWhole: boolean } {
  const taken: SumMeasure[] = [];
  const within = (key: keyof typeof standIn, least: number, most: number) => {
    const value = looseValueIn(texts, key);
    if (value === undefined && key !== "bezel" && isAskedOf(texts.kind, key)) taken.push(key);
    return Math.min(most, Math.max(least, value ?? standIn[key]));
  };
  const glass = { width: within("width", 0.01, 10), distance: within("eyeDistance", 0, 10) };
  const more = {
    sideAngle: within("sideAngle", 0, 180),
    bezel: within("bezel", 0, 1),
    radius: within("radius", 0.01, 100),
  };
  const { kind } = texts;
  return { setup: { ...glass, ...more, kind }, isWhole: taken.length === 0 };
}

/** The record that the sum makes of the one in force; refused while there is no field of view to set. */
export function readRecord(
  texts: SumTexts,
  sum: Sum,
  inForce: RigSettings | undefined,
  today: CalendarDate,
): FormReading<Fields<RigSettings>, keyof SumTexts & string> {
  const { screen, view, problems, missing } = sum;
  const missed = (["width", "eyeDistance", "sideAngle", "radius"] as const).filter(
    (key) => isAskedOf(texts.kind, key) && screen[key] === undefined && problems[key] === undefined,
  );
  if (view?.known !== true || missing.length > 0) {
    const asked = missed.map((key) => [
      key === "width" && texts.by === "diagonal" ? "diagonal" : key,
      { wrong: "Not written down yet.", right: "Without it there is no field of view." },
    ]);
    return { ok: false, problems: { ...Object.fromEntries(asked), ...problems } };
  }
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  const degrees = viewSetting(view.value, texts.asked);
  if (degrees === undefined)
    return {
      ok: false,
      problems: {
        height: {
          wrong: "Upright needs the height of the picture.",
          right: "Write it down, or set it across.",
        },
      },
    };
  const axis = texts.asked === "upright" ? "vertical" : "horizontal";
  return {
    ok: true,
    value: recordFrom(inForce, { from: today, screen, view: { ...inForce?.view, degrees, axis } }),
  };
}
