import { type AssumedPractice, type CalendarDate, isCalendarDate, isTimeKind } from "#domain";
import type { DrivenCombo, Form } from "#live";
import type { TargetFigure } from "#stats";
import { Choice } from "#ui/Choice.tsx";
import { Columns } from "#ui/Columns.tsx";
import { Field } from "#ui/Field.tsx";
import { Select } from "#ui/Select.tsx";
import { progressOnly, sayHowToType, sayTargetValue, valueLabel } from "#words";
import { Practice } from "./Practice.tsx";
import { Suggestions } from "./Suggestions.tsx";
import styles from "./TargetForm.module.css";
import { Trial } from "./Trial.tsx";
import { exampleUnder, type ReadTarget, type TypedTarget, typedLaps } from "./typedTarget.ts";

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
  /** What the driver counts on with the combo that is chosen. */
  readonly practice: AssumedPractice | undefined;
  readonly today: CalendarDate;
}

const kinds = [
  { value: "best", label: "best lap" },
  { value: "median", label: "usual lap" },
  { value: "meanOf", label: "mean of laps in a row" },
  { value: "scatter", label: "scatter" },
  { value: "cleanShare", label: "share of clean laps" },
] as const;
const units = { scatter: "s", cleanShare: "%" } as const;

/** What a target is made of. */
export function TargetFields(props: TargetFieldsProps) {
  const { typed, set, field, read, now, combos, practice, today } = props;
  const { comboId, kind, by, value } = typed;
  const laps = typedLaps(typed);
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
            {kind === "meanOf" && (
              <Field label="Laps in a row" size="between" inputMode="numeric" {...field("laps")} />
            )}
            <ValueField typed={typed} field={field} read={read} now={now} />
            <Field label="By" type="date" size="between" {...field("by")} />
          </div>
          {isTimeKind(kind) &&
            isCalendarDate(by) &&
            by >= today &&
            (kind !== "meanOf" || laps !== undefined) && (
              <Suggestions typed={{ comboId, kind, laps, by, value }} set={set} today={today} />
            )}
        </div>
        {isTimeKind(kind) ? (
          <div className={styles["form"]}>
            <Trial tried={triedOf(typed, read, today)} />
            {triedOf(typed, read, today) && (
              <Practice comboId={comboId} practice={practice} today={today} place="form" />
            )}
          </div>
        ) : (
          <p className={styles["aside"]}>{progressOnly}</p>
        )}
      </Columns>
      <Field
        label="One thing to do for it, if you like"
        size="between"
        maxLength={200}
        {...field("process")}
        hint="What you do, not how it turns out: “brake later for corner 5”"
      />
      <div className={styles["pair"]}>
        <Field label="What it is for, if you like" size="between" maxLength={200} {...field("why")} />
        <Field label="Note, if you like" size="between" maxLength={500} {...field("note")} />
      </div>
    </>
  );
}

/** What is wanted, in the unit of its figure, with the figure now under it. */
function ValueField({
  typed,
  field,
  read,
  now,
}: Pick<TargetFieldsProps, "typed" | "field" | "read" | "now">) {
  const { kind } = typed;
  const laps = typedLaps(typed);
  const meant = read !== undefined && isTimeKind(kind) ? sayTargetValue(kind, read.value) : undefined;
  return (
    <Field
      label={valueLabel(kind)}
      size="between"
      inputMode="decimal"
      unit={isTimeKind(kind) ? undefined : units[kind]}
      {...field("value")}
      hint={
        <>
          {meant !== undefined && meant !== typed.value.trim() && <strong>{meant} · </strong>}
          {sayHowToType({ kind, laps }, now, now === undefined ? "" : exampleUnder(now.value))}
        </>
      }
    />
  );
}

/** What its chance is asked of; undefined while what is typed is no target to come. */
function triedOf({ comboId }: TypedTarget, read: ReadTarget | undefined, today: CalendarDate) {
  if (read === undefined || read.by < today || !isTimeKind(read.kind)) return undefined;
  const { kind, laps, value, by } = read;
  return { comboId, kind, laps, value, by, today };
}
