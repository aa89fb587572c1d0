import { useState } from "react";
import { addCombo, combosWithNames, lastDriven, preferences, rigInForce, startSession } from "#db";
import {
  askDate,
  type Focus,
  focuses,
  instantOf,
  isClockWrong,
  isDateAsked,
  layoutName,
  practiceDay,
  readDate,
  sayClockWrong,
  sayDate,
} from "#domain";
import { readTime } from "#entry";
import { useDraft, useLogbook, useRows, useUntil, useWrite } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Combobox } from "#ui/Combobox.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Select } from "#ui/Select.tsx";
import { useToProblem } from "#ui/useToProblem.ts";
import { IsItYours } from "../putRight/IsItYours.tsx";
import {
  likelyMeant,
  namesOf,
  pickedCombo,
  problemOfLikely,
  problemOfName,
  trackOptions,
} from "./comboChoice.ts";
import styles from "./StartForm.module.css";

const blank = {
  car: "",
  track: "",
  /** Names that were said to be new, though others are like them. */
  newCar: "",
  newTrack: "",
  focus: "free" as Focus,
  target: "",
  conditions: "",
  date: "",
};

const noon = 12;

/** Starts a session: two fields are enough, all else has a sensible default. An earlier date enters it afterwards. */
export function StartForm() {
  const { surroundings } = useLogbook();
  const write = useWrite();
  const draft = useDraft("start", blank);
  const [isRefused, setRefused] = useState(false);
  /** The date after tomorrow, or of a clock that is wrong, that the driver was asked about. */
  const [asked, setAsked] = useState<string>();
  const [isBusy, setBusy] = useState(false);
  const { form, toProblem } = useToProblem();
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
  if (known === undefined) return null;
  const { combos } = known;
  const [last] = combos;
  // The combo driven last stands there until something is typed; a field that was emptied stays empty.
  const value =
    draft.value === blank && last
      ? { ...blank, car: last.car.name, track: layoutName(last.track, last.layout) }
      : draft.value;
  const { car, track, newCar, newTrack, focus, target, conditions, date } = value;
  const set = (patch: Partial<typeof blank>) => {
    setRefused(false);
    draft.set({ ...value, ...patch });
  };
  const names = namesOf(combos);
  const dayOf = (at: number) => practiceDay(at, surroundings.zone(), known.preferences.dayStartsAt);
  const readTarget =
    target.trim() === ""
      ? undefined
      : readTime(target, { displayDecimals: known.preferences.displayDecimals });
  const day = date.trim() === "" ? undefined : readDate(date);
  const meant = likelyMeant(car, track, names);
  const meantCar = newCar === car ? undefined : meant.car;
  const meantTrack = newTrack === track ? undefined : meant.track;
  const problems = {
    car: problemOfName(car, "car", "club hatch") ?? problemOfLikely(meantCar),
    track: problemOfName(track, "track layout", "Marlow Fen") ?? problemOfLikely(meantTrack),
    target: readTarget?.ok === false ? readTarget.problem : undefined,
    date: day?.ok === false ? day.problem : undefined,
  };
  /** The date that has to be asked about. Without one of the driver's own it is the clock's. */
  const doubt = () => {
    const now = surroundings.clock();
    if (day === undefined) return isClockWrong(now) ? dayOf(now) : undefined;
    return day.ok && isDateAsked(day.date, dayOf(now), now) ? day.date : undefined;
  };
  const doubtful = doubt();

  const start = async () => {
    if (Object.values(problems).some(Boolean)) {
      setRefused(true);
      toProblem();
      return;
    }
    if (isBusy) return;
    // The clock may have been set since the form was drawn.
    const doubted = doubt();
    if (doubted !== undefined && doubted !== asked) return setAsked(doubted);
    setBusy(true);
    const zone = surroundings.zone();
    // The page may have stood open over the end of the day, or travelled.
    const now = practiceDay(surroundings.clock(), zone, known.preferences.dayStartsAt);
    const isEarlier = day?.ok === true && day.date !== now;
    const started = await write(async (book) => {
      const combo = pickedCombo(car, track, combos);
      const { comboId } = "id" in combo ? { comboId: combo.id } : await addCombo(book, combo);
      const on = isEarlier ? day.date : now;
      const rig = await rigInForce(book, on);
      return startSession(book, {
        comboId,
        date: on,
        zone,
        focus,
        ...(isEarlier && { startedAt: instantOf(on, noon, zone), isTimeOfDayKnown: false }),
        ...(readTarget?.ok && { targetMs: readTarget.ms }),
        ...(conditions.trim() !== "" && { conditions: conditions.trim() }),
        ...(rig && { run: { rigId: rig.id } }),
      });
    });
    setBusy(false);
    if (started === undefined || !("sessionId" in started)) return;
    draft.set(undefined);
    goTo({ place: "log", sessionId: String(started.sessionId) });
  };
  const shown = <P,>(problem: P) => (isRefused ? problem : undefined);
  return (
    <form
      ref={form}
      noValidate
      className={styles["form"]}
      onSubmit={(event) => {
        event.preventDefault();
        void start();
      }}
    >
      <HalfTyped of={draft} />
      <Combobox
        label="Car"
        text={car}
        onText={(text) => set({ car: text })}
        options={names.cars}
        onPick={({ label }) => set({ car: label })}
        sayMake={(text) => `New car “${text}”`}
        onMake={(text) => set({ car: text })}
        problem={shown(problems.car)}
      />
      <IsItYours old={meantCar} onUse={(old) => set({ car: old })} onNew={() => set({ newCar: car })} />
      <Combobox
        label="Track layout"
        text={track}
        onText={(text) => set({ track: text })}
        options={trackOptions(names, track)}
        onPick={({ label }) => set({ track: label })}
        sayMake={(text) => `New track “${text}”`}
        onMake={(text) => set({ track: text })}
        problem={shown(problems.track)}
        hint="A second layout of a track: its name, a comma, the layout (Marlow Fen, short)."
      />
      <IsItYours
        old={meantTrack}
        onUse={(old) => set({ track: old })}
        onNew={() => set({ newTrack: track })}
      />
      <div role="status">
        {doubtful !== undefined && doubtful === asked && (
          <Notice>
            {day === undefined ? (
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
            value={focus}
            options={focuses.map((one) => ({ value: one.focus, label: one.word }))}
            onChange={(next) => set({ focus: next })}
          />
          <Field
            label="Target of the day"
            inputMode="decimal"
            value={target}
            onChange={(text) => set({ target: text })}
            hint="A lap time, 1:23.000"
            problem={problems.target}
          />
          <Field
            label="Conditions"
            value={conditions}
            maxLength={2000}
            onChange={(text) => set({ conditions: text })}
          />
          <Field
            label="Date, if it was not today"
            type="date"
            value={date}
            onChange={(text) => set({ date: text })}
            problem={problems.date}
          />
        </div>
      </Disclosure>
    </form>
  );
}
