import type { ReactNode } from "react";
import {
  type AskedView,
  moved,
  pixelsPerDegree,
  type ScreenSetup,
  type ScreenView,
  screenView,
} from "#physics";
import { Button } from "#ui/Button.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Part } from "#ui/Part.tsx";
import { type Row, RuledTable } from "#ui/RuledTable.tsx";
import {
  curvedGlassSays,
  mostSideAngle,
  sayAngle,
  sayNoUpright,
  sayNoView,
  saySharpness,
  saySquareTurn,
  sayToMend,
  screenViewReading,
  screenViewTitle,
} from "#words";
import type { Sum } from "./readSum.ts";
import styles from "./ScreenSum.module.css";
import { type SumField, type SumTexts, sumLabels } from "./sumTexts.ts";

interface ViewProps {
  readonly texts: SumTexts;
  readonly sum: Sum;
}

interface ViewFoundProps extends ViewProps {
  readonly onChange: (texts: SumTexts) => void;
  /** What is stored, and the button for it. */
  readonly children: ReactNode;
}

/** What the simulator is to be set to, large; or what it takes to work that out. */
export function ViewAnswer({ texts, sum, typing }: ViewProps & { readonly typing: SumField | undefined }) {
  const { view, screen } = sum;
  if (view?.known !== true) {
    const wrong = (Object.keys(sumLabels) as SumField[]).find((key) => sum.problems[key] !== undefined);
    // Half a figure is no mistake: nothing is said of it before its field is left.
    const said =
      wrong === undefined ? sayNoView(sum.missing, view) : wrong !== typing && sayToMend(sumLabels[wrong]);
    return (
      <Part title="The field of view" ruled>
        <p>{said || "—"}</p>
      </Part>
    );
  }
  return (
    <Part title={<span className={styles["found"]}>{screenViewTitle(view.value, texts.asked)}</span>} ruled>
      <p>{screenViewReading(view.value, screen.sideAngle)}</p>
    </Part>
  );
}

/** How the simulator asks for it; the figures behind the answer; and what a change would do. */
export function ViewFound({ texts, sum, onChange, children }: ViewFoundProps) {
  const { view, setup } = sum;
  if (view?.known !== true || setup === undefined)
    return (
      <>
        <SquareTurn texts={texts} sum={sum} onChange={onChange} />
        {children}
      </>
    );
  const found = view.value;
  return (
    <>
      {setup.kind === "curved" && <p className={styles["soft"]}>{curvedGlassSays(found)}</p>}
      <div className={styles["asks"]}>
        <Choice
          label="The simulator asks for it"
          size="between"
          value={texts.asked}
          options={waysOf(found)}
          hint={sayNoUpright(found)}
          onChange={(asked) => onChange({ ...texts, asked })}
        />
      </div>
      {children}
      <RuledTable caption="Angles, as seen" captionHidden columns={columns} rows={rowsOf(setup, found)} />
      <Sharpness setup={setup} pixels={sum.screen.pixelsAcross} />
      <SquareTurn texts={texts} sum={sum} onChange={onChange} />
    </>
  );
}

const columns = [
  { key: "what", title: "" },
  { key: "across", title: "across", figures: true },
  { key: "upright", title: "upright", figures: true },
];

function waysOf({
  sides,
  drawnVertical,
}: ScreenView): { value: AskedView; label: string; disabled?: boolean }[] {
  return [
    { value: "one", label: sides === undefined ? "across" : "across one" },
    ...(sides === undefined ? [] : [{ value: "all" as const, label: "across all three" }]),
    { value: "upright", label: "upright", disabled: drawnVertical === undefined },
  ];
}

const STEP = 0.1;

function rowsOf(setup: ScreenSetup, { one, all, sides }: ScreenView): Row[] {
  const row = (id: string, what: string, across: number, upright: number | undefined): Row => ({
    id,
    cells: { what, across: sayAngle(across), upright: upright === undefined ? "" : sayAngle(upright) },
  });
  const steps = [
    ["nearer", -STEP],
    ["farther", STEP],
  ] as const;
  const beside = steps.flatMap(([way, metres]) => {
    const there = screenView(moved(setup, metres));
    const name = `ten centimetres ${way}`;
    return there.known ? [row(way, name, there.value.all.horizontal, there.value.all.vertical)] : [];
  });
  if (sides === undefined) return [row("now", "this screen", one.horizontal, one.vertical), ...beside];
  return [
    row("one", "middle screen", one.horizontal, one.vertical),
    row("side", "each side screen", sides.each, undefined),
    row("all", "all together", all.horizontal, all.vertical),
    ...beside,
  ];
}

function Sharpness({ setup, pixels }: { readonly setup: ScreenSetup; readonly pixels: number | undefined }) {
  if (pixels === undefined) return null;
  const sharp = pixelsPerDegree({ pixels, width: setup.width, distance: setup.distance });
  return sharp.known ? <p>{saySharpness(sharp.value)}</p> : null;
}

function SquareTurn({ texts, sum, onChange }: Omit<ViewFoundProps, "children">) {
  const { squareAngle, screen } = sum;
  if (squareAngle === undefined) return null;
  const degrees = Math.round(squareAngle);
  const now = screen.sideAngle;
  const canTake = degrees <= mostSideAngle && (now === undefined || Math.abs(squareAngle - now) >= 1);
  return (
    <p>
      {saySquareTurn(squareAngle, now)}{" "}
      {canTake && (
        <Button size="between" onClick={() => onChange({ ...texts, sideAngle: String(degrees) })}>
          Turn them to {degrees}°
        </Button>
      )}
    </p>
  );
}
