import { useEffect, useRef } from "react";
import { setPractice } from "#db";
import { type AssumedPractice, type CalendarDate, type Id, type Problem, practiceRanges } from "#domain";
import { type Measure, readMeasure, writeMeasure } from "#entry";
import { useFigures, useStoredText, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { asSentence, sayAsLately, sayCountedPractice, sayLapsASession, saySessionsAWeek } from "#words";
import styles from "./Practice.module.css";

interface PracticeProps {
  readonly comboId: Id;
  /** What the driver counts on; what is absent is taken as it was lately. */
  readonly practice: AssumedPractice | undefined;
  readonly today: CalendarDate;
  /** It stands beside chances in more than one place, each with what is typed there. */
  readonly place: "list" | "form";
}

const sessions: Measure = { name: "Sessions a week", unit: "", ...practiceRanges.sessionsAWeek };
const laps: Measure = {
  name: "Timed laps a session",
  unit: "",
  ...practiceRanges.lapsASession,
  isWhole: true,
};

/** The practice that the chances of a combo count on, to be changed beside them: they follow at once. */
export function Practice({ comboId, practice = {}, today, place }: PracticeProps) {
  const write = useWrite();
  const { value: lately } = useFigures("practiceLately", { comboId, today });
  if (lately === undefined) return null;
  const { sessionsAWeek, lapsASession } = practice;
  const store = (patch: { readonly [F in keyof AssumedPractice]?: number | undefined }) =>
    write((book) => setPractice(book, { comboId, practice: patch }));
  const draftKey = (figure: string) => `practice ${place} ${figure} ${comboId}`;
  const isAssumed = sessionsAWeek !== undefined || lapsASession !== undefined;
  return (
    <fieldset className={styles["practice"]}>
      <legend className={styles["legend"]}>The chances count on</legend>
      <div className={styles["fields"]}>
        <PracticeField
          measure={sessions}
          draftKey={draftKey("sessions")}
          value={sessionsAWeek}
          lately={lately === null ? "" : saySessionsAWeek(lately)}
          onStore={(typed) => store({ sessionsAWeek: typed })}
        />
        <PracticeField
          measure={laps}
          draftKey={draftKey("laps")}
          value={lapsASession}
          lately={lately === null ? "" : sayLapsASession(lately)}
          onStore={(typed) => store({ lapsASession: typed })}
        />
      </div>
      <p className={styles["source"]}>{sayCountedPractice(lately ?? undefined, practice)}</p>
      {isAssumed && lately !== null && (
        <div>
          <Button onClick={() => void store({ sessionsAWeek: undefined, lapsASession: undefined })}>
            {asSentence(sayAsLately(lately))}
          </Button>
        </div>
      )}
    </fieldset>
  );
}

interface PracticeFieldProps {
  readonly measure: Measure;
  readonly draftKey: string;
  /** The driver's own figure. */
  readonly value: number | undefined;
  /** What stands there where there is none. */
  readonly lately: string;
  readonly onStore: (value: number | undefined) => Promise<unknown>;
}

/** How long the typing rests before it is stored, ms. */
const restMs = 400;

/** One of the two figures; emptied, it is again as it was lately. */
function PracticeField({ measure, draftKey, value, lately, onStore }: PracticeFieldProps) {
  const stored = value === undefined ? lately : writeMeasure(value, measure);
  const { field, store, draft } = useStoredText({
    ...{ draftKey, value, stored },
    read: (text) => readMeasure(text, measure),
    onStore,
  });
  const latest = useRef(store);
  latest.current = store;
  const typed = field.value.trim();
  const reading = readMeasure(typed, measure);
  // “2.” may become 2.5: only what would stand there so is stored while it is typed.
  const isWhole = reading.ok && typed !== "" && writeMeasure(reading.value, measure) === typed;
  useEffect(() => {
    if (draft.isEmpty || !isWhole || typed === "") return;
    const clock = setTimeout(() => latest.current(), restMs);
    return () => clearTimeout(clock);
  }, [typed, isWhole, draft.isEmpty]);
  return (
    <div className={styles["field"]}>
      <Field
        label={measure.name}
        labelHidden
        unit={measure.name.slice(0, 1).toLowerCase() + measure.name.slice(1)}
        figures
        inputMode="decimal"
        onKeyDown={(event) => {
          if (event.key !== "Enter") return;
          // In a form it answers for itself.
          event.preventDefault();
          store();
        }}
        {...field}
        problem={reading.ok ? undefined : sayStill(reading.problem, stored)}
      />
      <HalfTyped of={draft} />
    </div>
  );
}

/** A figure that cannot be read leaves the one before in force. */
function sayStill({ wrong, right }: Problem, stored: string): Pick<Problem, "wrong" | "right"> {
  return stored === "" ? { wrong, right } : { wrong, right: `${right} Until then ${stored} counts.` };
}
