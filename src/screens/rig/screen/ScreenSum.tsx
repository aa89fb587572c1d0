import { useState } from "react";
import { addRig } from "#db";
import type { CalendarDate, RigSettings } from "#domain";
import { useDraft, useLogbook, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Columns } from "#ui/Columns.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { useHasRoom } from "#ui/useHasRoom.ts";
import { CautionOf } from "../CautionOf.tsx";
import { rigChanges, sayChanges } from "../rigWords.ts";
import { readRecord, readSum } from "./readSum.ts";
import { ScreenPlanForm } from "./ScreenPlanForm.tsx";
import styles from "./ScreenSum.module.css";
import { inUnit, type SumField, type SumTexts, startTexts, wordsOfSum } from "./sumTexts.ts";
import { ThisScreen } from "./ThisScreen.tsx";
import { ViewAnswer, ViewFound } from "./ViewFound.tsx";

interface ScreenSumProps {
  readonly inForce: RigSettings | undefined;
  readonly today: CalendarDate;
  readonly onStored: () => void;
}

/** Works out the field of view from a tape measure's figures, on a plan drawing that is the form, and writes it down. */
export function ScreenSum({ inForce, today, onStored }: ScreenSumProps) {
  const { book } = useLogbook();
  const [id] = useState(() => book.newId());
  const draft = useDraft<SumTexts | null>("field of view", null, wordsOfSum);
  const texts = draft.value ?? startTexts(inForce, id);
  const typed = { value: texts, set: draft.set };
  const sum = readSum(texts);
  const reading = readRecord(texts, sum, inForce, today);
  const changes = reading.ok && inForce ? rigChanges(inForce, reading.value) : undefined;
  /** What was typed before it was begun again; typing anew lets go of it. */
  const [gone, setGone] = useState<SumTexts | null>(null);
  const [saidSame, setSaidSame] = useState(false);
  const isSame = changes?.length === 0;
  const { box, set, field, isRefused, submit } = useWriteForm({
    typed,
    reading,
    isAgreed: () => {
      setSaidSame(isSame);
      return !isSame;
    },
    write: (into, fields) => addRig(into, { ...fields, id: texts.id }),
    isUndoOffered: true,
    onStored,
  });
  const beginAgain = () => {
    setGone(draft.value);
    draft.set(undefined);
  };
  const [typing, setTyping] = useState<SumField>();
  const isBeside = useHasRoom("desk");
  const answer = <ViewAnswer texts={texts} sum={sum} typing={typing} />;
  if (!draft.isRead) return null;
  return (
    <form ref={box} noValidate aria-label="Field of view" className={styles["sum"]} onSubmit={submit}>
      <h2>Work out my field of view</h2>
      <HalfTyped of={draft} />
      <CautionOf part="view" torque={undefined} />
      {inForce?.screen.kind === "headset" && (
        <p>The record in force has a headset, which sets its field of view itself. This is for a screen.</p>
      )}
      <div className={styles["kinds"]}>
        <Choice
          label="Screens"
          size="between"
          value={texts.kind}
          options={[
            { value: "flat", label: "one flat" },
            { value: "three", label: "three" },
            { value: "curved", label: "curved" },
          ]}
          onChange={(kind) => set({ kind })}
        />
        <Choice
          label="Lengths in"
          size="between"
          value={texts.unit}
          options={[
            { value: "cm", label: "cm" },
            { value: "in", label: "inches" },
          ]}
          onChange={(unit) => typed.set(inUnit(texts, unit))}
        />
      </div>
      <Columns share={8}>
        <div className={styles["drawing"]}>
          <ScreenPlanForm
            texts={texts}
            sum={sum}
            typed={field}
            isRefused={isRefused}
            onChange={typed.set}
            typing={typing}
            onTyping={setTyping}
          >
            {!isBeside && answer}
          </ScreenPlanForm>
          <div className={styles["cardPart"]}>
            <Disclosure title="How large is this screen?" level={2} answer="hold a card against it">
              <ThisScreen texts={texts} onChange={typed.set} />
            </Disclosure>
          </div>
        </div>
        <div className={styles["result"]}>
          {isBeside && answer}
          <ViewFound texts={texts} sum={sum} onChange={typed.set}>
            <div role="status">
              {isRefused && <p>Not stored yet: something is missing or has to be mended.</p>}
              {changes && <p>{sayChanges(changes)}</p>}
              {saidSame && isSame && <p>It is what the record in force says: nothing to store.</p>}
            </div>
            <ButtonRow
              others={
                draft.isEmpty ? (
                  gone && (
                    <Button size="between" onClick={() => draft.set(gone)}>
                      Bring back what was typed
                    </Button>
                  )
                ) : (
                  <Button size="between" onClick={beginAgain}>
                    Begin again
                  </Button>
                )
              }
              main={
                <Button type="submit" variant="primary" size="between">
                  Store this
                </Button>
              }
            />
          </ViewFound>
        </div>
      </Columns>
    </form>
  );
}
