import { Suspense, useId } from "react";
import { type PlannedRun, type Preferences, sayDay } from "#domain";
import { useLogbook } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { FigureRow } from "#ui/FigureRow.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { Name } from "#ui/Name.tsx";
import { sayLapTime, sayUsual } from "#words";
import styles from "./Lately.module.css";
import type { LateCombo } from "./useLately.ts";

// It works out a whole plan; the way to start a session does not wait for that.
const Tonight = laterPart(() => import("./Tonight.tsx").then((file) => file.Tonight));

interface LastComboProps {
  readonly late: LateCombo;
  readonly preferences: Preferences;
  /** With the lines of a plan, or with none. */
  readonly onStart: (plan?: readonly PlannedRun[]) => void;
}

/** The combo driven last: what stands in the book about it, what to do next, and the way to go on. */
export function LastCombo({ late, preferences, onStart }: LastComboProps) {
  const { named, last, figures, own } = late;
  const { newId } = useLogbook().surroundings;
  const tonightId = useId();
  const { best, usual } = figures ?? {};
  const about = [sayDay(last.date), last.focus === "free" ? undefined : `focus: ${last.focus}`];
  return (
    <section className={styles["last"]} aria-label="Last time">
      <div>
        <p className={styles["soft"]}>Last time, {about.filter(Boolean).join(", ")}</p>
        <h2 className={styles["title"]}>
          <Name>{named.name}</Name>
        </h2>
      </div>
      <FigureRow
        figures={[
          { label: "PB", value: best ? sayLapTime(best.ms, best.decimals) : "—" },
          { label: "usual lap", value: usual ? sayUsual(usual.ms, usual.decimals) : "—" },
        ]}
      />
      {last.note.trim() !== "" && (
        <section aria-label="Your note from last time">
          <p className={styles["soft"]}>Your note</p>
          <blockquote className={styles["note"]}>
            <Name>{last.note}</Name>
          </blockquote>
        </section>
      )}
      {own === undefined ? (
        <Button variant="primary" size="between" onClick={() => onStart()}>
          Same as last time
        </Button>
      ) : (
        <ButtonRow
          others={
            <Button size="between" onClick={() => onStart()}>
              Start without the plan
            </Button>
          }
          main={
            <Button variant="primary" size="between" onClick={() => onStart(own.lines)}>
              Start with your plan
            </Button>
          }
        />
      )}
      <section className={styles["next"]} aria-labelledby={tonightId}>
        <p id={tonightId} className={styles["soft"]}>
          {own === undefined ? "Tonight, by your figures" : "Tonight, by your plan"}
        </p>
        <FaultBoundary what="What to do tonight">
          <Suspense fallback={null}>
            <Tonight
              combo={named}
              preferences={preferences}
              onStart={(lines) => onStart(lines.map((line) => ({ ...line, id: newId() })))}
            />
          </Suspense>
        </FaultBoundary>
      </section>
    </section>
  );
}
