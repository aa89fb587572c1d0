import { type CalendarDate, formatLapTime, isCalendarDate } from "#domain";
import type { DrivenCombo, Form } from "#live";
import type { TargetFigure } from "#stats";
import { Choice } from "#ui/Choice.tsx";
import { Columns } from "#ui/Columns.tsx";
import { Field } from "#ui/Field.tsx";
import { Select } from "#ui/Select.tsx";
import { sayTargetFigure } from "#words";
import { Suggestions } from "./Suggestions.tsx";
import styles from "./TargetForm.module.css";
import { Trial } from "./Trial.tsx";
import { exampleUnder, type ReadTarget, type TypedTarget } from "./typedTarget.ts";

interface TargetFieldsProps {
  readonly typed: TypedTarget;
  readonly set: (patch: Partial<TypedTarget>) => void;
  readonly field: Form<TypedTarget, HTMLFormElement>["field"];
  /** What the typed text stands for. */
  readonly read: ReadTarget | undefined;
  /** The figure now. */
  readonly now: TargetFigure | undefined;
  /** Those to choose from; empty where the combo stands. */
  readonly combos: readonly DrivenCombo[];
  readonly today: CalendarDate;
}

const kinds = [
  { value: "best", label: "best lap" },
  { value: "median", label: "usual lap" },
] as const;

/** What a target is made of. */
export function TargetFields({ typed, set, field, read, now, combos, today }: TargetFieldsProps) {
  const { by } = typed;
  const isUnlike = read !== undefined && formatLapTime(read.value) !== typed.value.trim();
  const tried = read &&
    by >= today && { comboId: typed.comboId, kind: read.kind, value: read.value, by: read.by, today };
  return (
    <>
      <Columns share={7}>
        <div className={styles["form"]}>
          {combos.length > 0 && (
            <Select
              label="Combo"
              options={combos.map(({ id, name }) => ({ value: id, label: name }))}
              {...field("comboId")}
            />
          )}
          <Choice label="Figure" size="between" options={kinds} {...field("kind")} />
          <div className={styles["pair"]}>
            <Field
              label="Time to reach"
              size="between"
              inputMode="decimal"
              {...field("value")}
              hint={
                <>
                  {isUnlike && <strong>{formatLapTime(read.value)} · </strong>}
                  {now === undefined
                    ? "Type it as 1:23.456"
                    : `${typed.kind === "best" ? "Best" : "Usual lap"} so far ${sayTargetFigure(typed.kind, now)}. Type it like ${exampleUnder(now.value)}, or its last digits`}
                </>
              }
            />
            <Field label="By" type="date" size="between" {...field("by")} />
          </div>
          {isCalendarDate(by) && by >= today && (
            <Suggestions typed={{ ...typed, by }} set={set} today={today} />
          )}
        </div>
        <Trial tried={tried || undefined} />
      </Columns>
      <Field
        label="One thing to do for it, if you like"
        size="between"
        maxLength={200}
        {...field("process")}
        hint="What you do, not how it turns out: “brake later for corner 5”"
      />
    </>
  );
}
