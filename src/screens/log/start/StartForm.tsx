import { useState } from "react";
import { type ComboWithNames, combosWithNames, lastDriven, preferences, rigInForce, startSession } from "#db";
import {
  askDate,
  type Focus,
  focuses,
  instantOf,
  isClockWrong,
  isDateAsked,
  layoutName,
  type Preferences,
  practiceDay,
  sayClockWrong,
  sayDate,
} from "#domain";
import { type Draft, useDraft, useLogbook, useRows, useUntil, useWriteForm } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Combobox } from "#ui/Combobox.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Select } from "#ui/Select.tsx";
import { IsItYours } from "../putRight/IsItYours.tsx";
import { namesOf, trackOptions } from "./comboChoice.ts";
import styles from "./StartForm.module.css";
import { blankStart, meantBy, readStart, type TypedStart } from "./typedStart.ts";

const noon = 12;

/** Starts a session: two fields are enough, all else has a sensible default. An earlier date enters it afterwards. */
export function StartForm() {
  const draft = useDraft("start", blankStart);
  const until = useUntil();
  const known = useRows(
    async (book) => {
      const [combos, chosen] = await Promise.all([combosWithNames(book), preferences(book)]);
      const driven = await lastDriven(
        book,
        combos.map(({ combo }) => combo.id),
        until,
      );
      combos.sort((a, b) => (driven.get(b.combo.id) ?? 0) - (driven.get(a.combo.id) ?? 0));
      return { combos, preferences: chosen };
    },
    [until],
  );
  return known && <StartFields draft={draft} {...known} />;
}

interface StartFieldsProps {
  readonly draft: Draft<TypedStart>;
  /** Those driven last first. */
  readonly combos: readonly ComboWithNames[];
  readonly preferences: Preferences;
}

function StartFields({ draft, combos, preferences: chosen }: StartFieldsProps) {
  const { surroundings } = useLogbook();
  /** The date after tomorrow, or of a clock that is wrong, that the driver was asked about. */
  const [asked, setAsked] = useState<string>();
  const [last] = combos;
  // The combo driven last stands there until something is typed; a field that was emptied stays empty.
  const typed =
    draft.value === blankStart && last
      ? { ...blankStart, car: last.car.name, track: layoutName(last.track, last.layout) }
      : draft.value;
  const names = namesOf(combos);
  const meant = meantBy(typed, names);
  const reading = readStart(typed, { names, combos, displayDecimals: chosen.displayDecimals });
  const problems = reading.ok ? {} : reading.problems;
  const dayOf = (at: number) => practiceDay(at, surroundings.zone(), chosen.dayStartsAt);
  /** The date that has to be asked about. Without one of the driver's own it is the clock's. */
  const doubt = () => {
    if (!reading.ok) return undefined;
    const now = surroundings.clock();
    const { date } = reading.value;
    if (date === undefined) return isClockWrong(now) ? dayOf(now) : undefined;
    return isDateAsked(date, dayOf(now), now) ? date : undefined;
  };
  const doubtful = doubt();

  const { box, set, field, isBusy, submit } = useWriteForm({
    typed: { value: typed, set: draft.set },
    reading,
    isAgreed: () => {
      // The clock may have been set since the form was drawn.
      const doubted = doubt();
      if (doubted === undefined || doubted === asked) return true;
      setAsked(doubted);
      return false;
    },
    write: async (book, { on, focus, targetMs, conditions, date }) => {
      const zone = surroundings.zone();
      // The page may have stood open over the end of the day, or travelled.
      const today = dayOf(surroundings.clock());
      const isEarlier = date !== undefined && date !== today;
      const rig = await rigInForce(book, date ?? today);
      return startSession(book, {
        ...on,
        date: date ?? today,
        zone,
        focus,
        ...(isEarlier && { startedAt: instantOf(date, noon, zone), isTimeOfDayKnown: false }),
        ...(targetMs !== undefined && { targetMs }),
        ...(conditions !== undefined && { conditions }),
        ...(rig && { run: { rigId: rig.id } }),
      });
    },
    onStored: ({ sessionId }) => goTo({ place: "log", sessionId }),
  });
  const [car, track] = [field("car"), field("track")];
  return (
    <form ref={box} noValidate className={styles["form"]} onSubmit={submit}>
      <HalfTyped of={draft} />
      <Combobox
        label="Car"
        text={car.value}
        onText={car.onChange}
        options={names.cars}
        onPick={({ label }) => car.onChange(label)}
        sayMake={(text) => `New car “${text}”`}
        onMake={car.onChange}
        problem={car.problem}
      />
      <IsItYours old={meant.car} onUse={car.onChange} onNew={() => set({ newCar: car.value })} />
      <Combobox
        label="Track layout"
        text={track.value}
        onText={track.onChange}
        options={trackOptions(names, track.value)}
        onPick={({ label }) => track.onChange(label)}
        sayMake={(text) => `New track “${text}”`}
        onMake={track.onChange}
        problem={track.problem}
        hint="A second layout of a track: its name, a comma, the layout (Varnholt Ring, short)."
      />
      <IsItYours old={meant.track} onUse={track.onChange} onNew={() => set({ newTrack: track.value })} />
      <div role="status">
        {doubtful !== undefined && doubtful === asked && (
          <Notice>
            {typed.date.trim() === "" ? (
              <p>
                {sayClockWrong(doubtful)} Set it right, or write the date under “Focus, target, conditions,
                another date”. Start the session once more to keep {sayDate(doubtful)}.
              </p>
            ) : (
              <p>{askDate("session", doubtful)} Start it once more to keep it.</p>
            )}
          </Notice>
        )}
      </div>
      <Button type="submit" variant="primary" size="between" disabled={isBusy}>
        Start the session
      </Button>
      <Disclosure
        title="Focus, target, conditions, another date"
        startOpen={problems.date !== undefined || problems.target !== undefined}
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
