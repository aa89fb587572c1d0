import { type ReactNode, useEffect, useState } from "react";
import { preferences } from "#db";
import { type Focus, focuses, layoutName, type Preferences } from "#domain";
import { type Draft, type DrivenCombo, type Press, useCombos, useDraft, useRows, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Select } from "#ui/Select.tsx";
import { ComboFields } from "./ComboFields.tsx";
import { namesOf } from "./comboChoice.ts";
import { DateDoubt } from "./DateDoubt.tsx";
import styles from "./StartForm.module.css";
import { meantBy } from "./typedCombo.ts";
import { blankStart, readStart, type TypedStart } from "./typedStart.ts";
import { useReaders } from "./useReaders.ts";
import { useStarting } from "./useStarting.ts";

interface StartFormProps {
  /** Nothing else on the page starts a session, so its button is the main one. */
  readonly isMain?: boolean;
  /** The first field takes the focus where nothing has it. */
  readonly takesFocus?: boolean;
  /** Another way on, beside the button. */
  readonly beside?: ReactNode;
}

/** Starts a session: two fields are enough, all else has a sensible default. An earlier date enters it afterwards. */
export function StartForm(props: StartFormProps) {
  const draft = useDraft("start", blankStart);
  const combos = useCombos();
  const chosen = useRows(preferences, []);
  return combos && chosen && <StartFields draft={draft} combos={combos} preferences={chosen} {...props} />;
}

interface StartFieldsProps extends StartFormProps {
  readonly draft: Draft<TypedStart>;
  /** Those driven last first. */
  readonly combos: readonly DrivenCombo[];
  readonly preferences: Preferences;
}

function StartFields({
  draft,
  combos,
  preferences: chosen,
  isMain = false,
  takesFocus = false,
  beside,
}: StartFieldsProps) {
  const starting = useStarting(chosen);
  const [last] = combos;
  // The combo driven last stands there until something is typed; a field that was emptied stays empty.
  const typed =
    draft.value === blankStart && last
      ? { ...blankStart, car: last.car.name, track: layoutName(last.track, last.layout) }
      : draft.value;
  const names = namesOf(combos);
  const [isUnfolded, setUnfolded] = useState(false);
  const hasMore = typed.target !== "" || typed.date !== "";
  const { readers, isComing } = useReaders(isUnfolded || hasMore);
  const reading = readStart(typed, { names, combos, displayDecimals: chosen.displayDecimals, readers });
  const problems = reading.ok || isComing ? {} : reading.problems;
  const { box, set, field, isBusy, submit } = useWriteForm({
    typed: { value: typed, set: draft.set },
    reading,
    // The clock may have been set since the form was drawn.
    isAgreed: ({ date }) => starting.isAgreed(date),
    write: starting.write,
    onStored: starting.onStored,
    onTakenBack: starting.onTakenBack,
  });
  useEffect(() => {
    if (takesFocus && document.activeElement === document.body)
      box.current?.querySelector("input")?.focus({ preventScroll: true });
  }, [takesFocus, box]);
  // Pressed while what was typed cannot be read yet: it counts as soon as it can.
  const [early, setEarly] = useState<Press>();
  const press = (pressed: Press) => {
    pressed.preventDefault();
    if (isComing && hasMore) setEarly(pressed);
    else submit(pressed);
  };
  useEffect(() => {
    if (early === undefined || isComing) return;
    setEarly(undefined);
    submit(early);
  }, [early, isComing, submit]);
  const question = reading.ok ? starting.question(reading.value.date) : undefined;
  return (
    <form ref={box} noValidate className={styles["form"]} onSubmit={press}>
      <HalfTyped of={draft} />
      <ComboFields
        names={names}
        car={field("car")}
        track={field("track")}
        meant={meantBy(typed, names)}
        onNew={set}
      />
      <DateDoubt question={question} />
      <ButtonRow
        others={beside}
        main={
          <Button type="submit" variant={isMain ? "primary" : "plain"} size="between" disabled={isBusy}>
            Start the session
          </Button>
        }
      />
      <Disclosure
        title="Focus, target, conditions, another date"
        startOpen={problems.date !== undefined || problems.target !== undefined}
        onToggle={setUnfolded}
      >
        <div className={styles["more"]}>
          <Select<Focus>
            label="Focus"
            options={focuses.map((one) => ({ value: one.focus, label: one.word }))}
            {...field("focus")}
          />
          <Field
            label="Target of the day"
            inputMode="decimal"
            {...field("target")}
            hint="A lap time, 1:23.000"
            problem={problems.target}
          />
          <Field label="Conditions" maxLength={2000} {...field("conditions")} />
          <Field label="Date, if it was not today" type="date" {...field("date")} problem={problems.date} />
        </div>
      </Disclosure>
    </form>
  );
}
