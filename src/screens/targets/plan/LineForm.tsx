import { useEffect } from "react";
import { putLine } from "#db";
import {
  type Drill,
  drills,
  efforts,
  longestName,
  type PlanFigure,
  type PlannedRun,
  placeOfLine,
  planFigures,
  runKinds,
} from "#domain";
import { useLogbook, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Field } from "#ui/Field.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Select } from "#ui/Select.tsx";
import { Sheet } from "#ui/Sheet.tsx";
import { checkWords, drillWords, effortWords, kindWords } from "#words";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";
import { readLine, type TypedLine } from "./typedLine.ts";
import type { LineEditing } from "./useLineForm.ts";

interface LineFormProps {
  readonly context: PlanContext;
  readonly editing: LineEditing;
  readonly typed: TypedLine;
}

const asksFirst = "Store this run or cancel it first: what you typed would be lost.";

/** One run of the plan as a form. */
export function LineForm({ context, editing, typed }: LineFormProps) {
  const { plan, facts, combo, preferences } = context;
  const { surroundings } = useLogbook();
  const { seen } = typed;
  const isGone = seen !== null && placeOfLine(plan.lines, seen) < 0;
  const { box, field, submit, set } = useWriteForm<
    TypedLine,
    Omit<PlannedRun, "id">,
    Awaited<ReturnType<typeof putLine>>
  >({
    typed: { value: typed, set: editing.set },
    reading: readLine(typed, {
      corners: combo.layout.corners,
      usual: facts.usual,
      displayDecimals: preferences.displayDecimals,
    }),
    write: (book, line) =>
      putLine(book, plan, {
        line: { ...line, id: seen?.id ?? surroundings.newId() },
        seen: seen ?? undefined,
      }),
    isUndoOffered: true,
  });
  useEffect(() => {
    if (editing.isFresh || editing.isInTheWay) box.current?.querySelector<HTMLElement>("input")?.focus();
  }, [editing.isFresh, editing.isInTheWay, box]);
  const close = () => editing.set(undefined);
  const isDrill = typed.kind === "drill";
  return (
    <Sheet>
      <form
        ref={box}
        noValidate
        aria-label={seen === null ? "A run for the plan" : `Change: ${seen.purpose}`}
        className={styles["form"]}
        onSubmit={submit}
      >
        <LiveRegion message={editing.isInTheWay ? asksFirst : ""} />
        {editing.isInTheWay && (
          <Notice>
            <p>{asksFirst}</p>
          </Notice>
        )}
        {isGone && (
          <Notice>
            <p>This run is no longer in the plan as you saw it. Stored, it comes in as a run of its own.</p>
          </Notice>
        )}
        <Field
          label="What it is for"
          size="between"
          maxLength={longestName}
          {...(isDrill && { hint: "Left empty, the drill gives it its name." })}
          {...field("purpose")}
        />
        <div className={styles["pair"]}>
          <Choice label="Kind" size="between" options={options(runKinds, kindWords)} {...field("kind")} />
          {typed.kind !== "race" && (
            <Choice
              label="Effort"
              size="between"
              options={options(efforts, effortWords)}
              {...field("effort")}
            />
          )}
        </div>
        <div className={styles["fields"]}>
          <Field
            label={isDrill ? "Laps, one try each" : "Laps"}
            figures
            size="between"
            inputMode="numeric"
            {...field("laps")}
          />
          <Field label="Corner, if any" figures size="between" inputMode="numeric" {...field("corner")} />
          {isDrill && <Select label="What is counted" options={drillOptions} {...field("drill")} />}
        </div>
        <Field label="One thing to attend to" size="between" maxLength={longestName} {...field("attendTo")} />
        <div className={styles["measured"]}>
          <Select
            label="Good when"
            options={figureOptions(isDrill && typed.drill !== "nothing")}
            {...field("figure")}
            onChange={(figure) => set({ figure, value: figure === typed.figure ? typed.value : "" })}
          />
          {typed.figure === "words" ? (
            <Field
              label="In your own words"
              hint="Left empty, it is yours to judge."
              size="between"
              maxLength={longestName}
              {...field("words")}
            />
          ) : (
            typed.figure !== "driven" && (
              <Field
                label={valueLabels[typed.figure]}
                figures
                size="between"
                inputMode="decimal"
                {...(isInSeconds(typed.figure) && { unit: "s" })}
                {...field("value")}
              />
            )
          )}
          {typed.figure === "sector" && (
            <Field label="Sector" figures size="between" inputMode="numeric" {...field("sector")} />
          )}
        </div>
        <ButtonRow
          others={
            <Button size="between" onClick={close}>
              Cancel
            </Button>
          }
          main={
            <Button type="submit" variant="primary" size="between">
              {seen === null || isGone ? "Add it" : "Store changes"}
            </Button>
          }
        />
      </form>
    </Sheet>
  );
}

function options<T extends string>(values: readonly T[], words: Readonly<Record<T, string>>) {
  return values.map((value) => ({ value, label: words[value] }));
}

const drillOptions: readonly { readonly value: Drill | "nothing"; readonly label: string }[] = [
  ...drills.map((drill) => ({ value: drill, label: drillWords[drill].name })),
  { value: "nothing", label: "nothing" },
];

function figureOptions(hasDrill: boolean) {
  return [
    ...planFigures
      .filter((figure) => figure !== "drill" || hasDrill)
      .map((figure) => ({ value: figure, label: checkWords[figure] })),
    { value: "words" as const, label: "in your own words" },
  ];
}

const valueLabels: Readonly<Record<Exclude<PlanFigure, "driven">, string>> = {
  clean: "Clean laps",
  usual: "Usual lap",
  best: "Best lap",
  scatter: "Laps differ by",
  corner: "Mistakes",
  sector: "Time",
  drill: "Of ten",
};

const isInSeconds = (figure: PlanFigure) => figure === "scatter" || figure === "sector";
