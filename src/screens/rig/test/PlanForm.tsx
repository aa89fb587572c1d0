import { useState } from "react";
import { addRigTest } from "#db";
import type { CalendarDate, RigSettings } from "#domain";
import { type DrivenCombo, useDraft, useFigures, useLogbook, useWriteForm } from "#live";
import { goTo, printAddress } from "#state/address.ts";
import { pairOrder, testLevel } from "#stats";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Columns } from "#ui/Columns.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import { Select } from "#ui/Select.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { sayQuestionLeft } from "#words";
import { drawSeed } from "./drawSeed.ts";
import { hintOf } from "./hintOf.ts";
import { PlanSides } from "./PlanSides.tsx";
import { PlanSize } from "./PlanSize.tsx";
import { planFields } from "./planFields.ts";
import { planSize } from "./planSize.ts";
import styles from "./Test.module.css";
import {
  blankPlan,
  questionOf,
  type ReadPlan,
  readEffort,
  readPlan,
  readSides,
  type TypedPlan,
  writeSmallest,
} from "./typedPlan.ts";

interface PlanFormProps {
  /** The one driven last comes first. */
  readonly combos: readonly [DrivenCombo, ...DrivenCombo[]];
  /** From the oldest to the newest. */
  readonly records: readonly RigSettings[];
  /** The record that holds today. */
  readonly inForce: RigSettings | undefined;
  readonly today: CalendarDate;
}

/** The plan as a form; what it takes stands beside it and follows every key. */
export function PlanForm({ combos, records, inForce, today }: PlanFormProps) {
  const { surroundings } = useLogbook();
  // One for as long as the form is open, so that pressing twice or trying again makes no second test.
  const [{ newId, seed }] = useState(() => ({
    newId: surroundings.newId(),
    seed: drawSeed(),
  }));
  const draft = useDraft<TypedPlan>("rig test", blankPlan, ({ wordsB, valueB, question }) =>
    [question, wordsB, valueB].filter(Boolean).join(" "),
  );
  const typed = draft.value;
  const combo = combos.find(({ id }) => id === typed.comboId) ?? combos[0];
  const { value: basis } = useFigures("testBasis", { comboId: combo.id, today });
  const { value: tests } = useFigures("rigTestPages", { comboId: combo.id });
  const running = tests?.find(({ report }) => !report.isOver);
  const fields = planFields(records, inForce);
  const field = fields.find(({ key }) => key === typed.field)?.field;
  const worthwhile = basis?.worthwhile[typed.figure];
  const offeredMs = worthwhile?.known ? worthwhile.value : undefined;
  const effort = readEffort(typed, offeredMs);
  const size = basis && planSize(basis, typed.figure, effort);
  const sides = readSides(typed, field, inForce);
  const asked = sides.ok ? sides.value : undefined;
  const question = questionOf(typed, asked, combo.name);
  const suggestedQuestion = questionOf({ ...typed, question: null }, asked, combo.name);
  const form = useWriteForm<TypedPlan, ReadPlan, Awaited<ReturnType<typeof addRigTest>>>({
    typed: { value: typed, set: draft.set },
    reading: readPlan(typed, {
      field,
      rig: inForce,
      comboName: combo.name,
      offeredMs,
      offeredPairs: size?.offered,
      isTaken: running !== undefined,
    }),
    write: (book, { pairs, ...plan }) =>
      addRigTest(book, {
        ...plan,
        id: newId,
        comboId: combo.id,
        ...(inForce && { rigA: inForce.id }),
        ...(size?.spreadMs !== undefined && { spreadMs: size.spreadMs }),
        pairsPlanned: pairs,
        level: testLevel,
        seed,
        pairs: pairOrder(pairs, seed).map((first) => ({ first })),
      }),
    isUndoOffered: true,
    onTakenBack: () => goTo({ place: "rig" }, "replace"),
    onStored: () => goTo({ place: "rig", testId: newId }, "replace"),
  });
  if (!draft.isRead) return null;
  const leave = () => {
    goTo({ place: "rig" });
    draft.set(undefined);
  };
  const offered = (key: "smallest" | "pairs" | "question", text: string) => ({
    ...form.field(key),
    value: typed[key] ?? text,
  });
  return (
    <form
      ref={form.box}
      noValidate
      aria-label="Plan a rig test"
      className={styles["form"]}
      onSubmit={form.submit}
    >
      <HalfTyped of={draft} />
      <Part title="Test a change" ruled>
        <p className={styles["line"]}>
          Two settings, driven in pairs of runs whose order is drawn by chance. At the end it says which is
          faster, by how much, and how sure that is.
        </p>
      </Part>
      <Columns share={7}>
        <div className={styles["column"]}>
          <Select
            label="Combo"
            options={combos.map(({ id, name }) => ({ value: id, label: name }))}
            {...form.field("comboId")}
            value={combo.id}
          />
          {running !== undefined && (
            <Notice>
              <p>
                A rig test of this combo is not over yet:{" "}
                <a href={printAddress({ place: "rig", testId: running.test.id })}>go on with it</a>. Two at
                once would get in each other’s way.
              </p>
            </Notice>
          )}
          <PlanSides typed={typed} form={form} fields={fields} picked={field} inForce={inForce} />
          <Choice
            label="Judged by"
            size="between"
            options={[
              { value: "usual", label: "usual lap" },
              { value: "scatter", label: "how far laps differ" },
            ]}
            {...form.field("figure")}
          />
          <div className={styles["pair"]}>
            <Field
              label="Smallest difference that would matter"
              hint={
                offeredMs === undefined || typed.smallest !== null
                  ? "A smaller one takes many more runs."
                  : "What is worth talking about on this combo."
              }
              unit="s"
              figures
              size="between"
              inputMode="decimal"
              {...offered("smallest", offeredMs === undefined ? "" : writeSmallest(offeredMs))}
            />
            <Field
              label="Laps a run"
              hint={hintOf(effort.laps, "Five clean ones make a run count.", form.field("laps").problem)}
              figures
              size="between"
              inputMode="numeric"
              {...form.field("laps")}
            />
          </div>
        </div>
        <PlanSize
          basis={basis}
          figure={typed.figure}
          effort={effort}
          size={size}
          pairs={offered("pairs", size?.offered === undefined ? "" : String(size.offered))}
        />
      </Columns>
      <TextArea
        label="The question"
        rows={2}
        dir="auto"
        hint={
          typed.question?.trim() === "" ? sayQuestionLeft(suggestedQuestion) : "It is the title of the test."
        }
        {...offered("question", question)}
      />
      <div role="status">{form.isRefused && <p>Not planned yet: something above has to be mended.</p>}</div>
      <ButtonRow
        others={
          <Button size="between" onClick={leave}>
            Cancel
          </Button>
        }
        main={
          <Button
            type="submit"
            variant="primary"
            size="between"
            disabled={basis === undefined || tests === undefined}
          >
            {size?.plan?.verdict.isWorth === false && typed.pairs === null
              ? "Plan it all the same"
              : "Plan the test"}
          </Button>
        }
      />
    </form>
  );
}
