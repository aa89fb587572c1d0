import type { ReactNode } from "react";
import { PlanDrawing } from "#charts/plan/PlanDrawing.tsx";
import type { FormField } from "#live";
import { screenPlan } from "#physics";
import { Field } from "#ui/Field.tsx";
import { type Option, Select } from "#ui/Select.tsx";
import { mostSideAngle, sayLength, sayPlan } from "#words";
import { drawnSetup, isAskedOf, type Sum } from "./readSum.ts";
import styles from "./ScreenSum.module.css";
import { StepField } from "./StepField.tsx";
import {
  measureOf,
  type SumField,
  type SumMeasure,
  type SumTexts,
  shapes,
  sizeTexts,
  sumLabels,
  textOf,
  withSize,
} from "./sumTexts.ts";

interface ScreenPlanFormProps {
  readonly texts: SumTexts;
  readonly sum: Sum;
  readonly typed: <K extends keyof SumTexts & string>(key: K) => FormField<SumTexts[K]>;
  readonly isRefused: boolean;
  readonly onChange: (texts: SumTexts) => void;
  /** The field that is being typed into: what is wrong in it is not said before it is left. */
  readonly typing: SumField | undefined;
  readonly onTyping: (key: SumField | undefined) => void;
  /** What stands between the drawing and its fields. */
  readonly children: ReactNode;
}

const shapeOptions: readonly Option[] = [
  ...shapes.map((shape) => ({ value: shape, label: shape })),
  { value: "own", label: "another" },
];

const handOnEye = "Drag the head to sit nearer or farther away.";
const handsOnThree =
  "Drag the head to sit nearer or farther away, and the end of the right screen to turn the side screens.";

/** A hand moves in steps of half a unit, and no nearer than a hand's width. */
const STEPS = 2;
const NEAREST = 0.1;

/** The plan drawing with its fields: those of lengths it shows lie on it where there is room. */
export function ScreenPlanForm(props: ScreenPlanFormProps) {
  const { texts, sum, typed, isRefused, onChange, typing, onTyping, children } = props;
  const { unit, kind } = texts;
  const shown = sizeTexts(texts);
  const { setup, isWhole } = drawnSetup(texts);
  const view = sum.view?.known ? sum.view.value : undefined;
  const sayAt = (key: SumMeasure, metres: number | undefined) =>
    metres === undefined ? undefined : key === "sideAngle" ? `${metres}°` : sayLength(metres, unit);
  const { screen } = sum;
  const planTexts = {
    width: sayAt("width", screen.width),
    eyeDistance: sayAt("eyeDistance", screen.eyeDistance),
    bezel: screen.bezel ? sayAt("bezel", screen.bezel) : undefined,
    sideAngle: sayAt("sideAngle", screen.sideAngle),
    radius: sayAt("radius", screen.radius) && `radius ${sayAt("radius", screen.radius)}`,
  };
  const change = (key: SumMeasure, text: string) =>
    onChange(
      key === "width" || key === "height" || key === "diagonal"
        ? withSize(texts, { [key]: text })
        : { ...texts, [key]: text },
    );
  const moved = (key: SumMeasure, value: number) => {
    const { stored = 1 } = measureOf(key, unit);
    const step = key === "sideAngle" ? 1 : stored / STEPS;
    change(key, textOf(Math.round(value / step) * step, key, unit));
  };
  const fieldOf = (key: SumMeasure, hint?: ReactNode) => {
    if (!isAskedOf(kind, key)) return null;
    const { unit: own } = measureOf(key, unit);
    const problem = isRefused ? (typed(key).problem ?? sum.problems[key]) : undefined;
    return (
      <StepField
        label={sumLabels[key]}
        value={shown[key] ?? texts[key]}
        unit={own === "" ? undefined : own}
        hint={hint}
        problem={problem ?? (typing === key ? undefined : sum.problems[key])}
        onChange={(text) => {
          onTyping(key);
          change(key, text);
        }}
        onBlur={() => onTyping(undefined)}
      />
    );
  };
  const drawn = { plan: screenPlan(setup), distance: setup.distance, sideAngle: sideAngleOf(setup), view };
  const lengths = { width: sayLength(setup.width, unit), distance: sayLength(setup.distance, unit) };
  return (
    <PlanDrawing
      drawn={drawn}
      label={sayPlan(kind, lengths, view)}
      texts={planTexts}
      isPale={!isWhole}
      onDistance={(metres) => moved("eyeDistance", Math.max(NEAREST, metres))}
      onSideAngle={(degrees) => moved("sideAngle", Math.min(mostSideAngle, Math.max(0, degrees)))}
    >
      {(at) => {
        const on = (key: "width" | "eyeDistance" | "bezel" | "sideAngle" | "radius", hint?: ReactNode) => {
          const place = at(key);
          const field = fieldOf(key, place === undefined ? hint : undefined);
          if (field === null) return null;
          return place === undefined ? (
            <div>{field}</div>
          ) : (
            <div className={styles["on"]} style={{ insetInlineStart: place.x, insetBlockStart: place.y }}>
              {field}
            </div>
          );
        };
        return (
          <div className={styles["under"]}>
            {children}
            <p className={styles["hand"]}>{kind === "three" ? handsOnThree : handOnEye}</p>
            <div className={styles["fields"]}>
              <div>{fieldOf("diagonal", "as sold, without the frame")}</div>
              <div>
                <Select
                  label="Shape"
                  value={shown.shape}
                  options={shapeOptions}
                  onChange={(shape) => onChange(withSize(texts, { shape }))}
                />
              </div>
              {texts.by !== "sides" && texts.shape === "own" && (
                <div>
                  <Field
                    label={sumLabels.own}
                    hint="such as 64:27"
                    value={texts.own}
                    problem={typing === "own" && !isRefused ? undefined : sum.problems.own}
                    onBlur={() => onTyping(undefined)}
                    onChange={(own) => {
                      onTyping("own");
                      onChange(withSize(texts, { own }));
                    }}
                  />
                </div>
              )}
              {on("width", kind === "curved" ? "along the glass" : "of one picture")}
              <div>{fieldOf("height")}</div>
              {on("eyeDistance", "from the middle of the picture")}
              {on("bezel", "of one frame at a joint")}
              {on("sideAngle", "0 when all stand in one line")}
              {on("radius", "a screen called 1500R has 150 cm")}
              <div>{fieldOf("pixelsAcross", "of one screen, for how fine it is")}</div>
            </div>
          </div>
        );
      }}
    </PlanDrawing>
  );
}

function sideAngleOf(setup: ReturnType<typeof drawnSetup>["setup"]): number | undefined {
  return setup.kind === "three" ? setup.sideAngle : undefined;
}
