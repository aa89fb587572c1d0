import { lazy, Suspense } from "react";
import { sayDay } from "#domain";
import { Button } from "#ui/Button.tsx";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { FigureRow } from "#ui/FigureRow.tsx";
import { Name } from "#ui/Name.tsx";
import { sayLapTime, sayUsual } from "#words";
import styles from "./Lately.module.css";
import type { LateCombo } from "./useLately.ts";

// It works out a whole session; the way to start one does not wait for that.
const NextTime = lazy(() => import("./NextTime.tsx").then((file) => ({ default: file.NextTime })));

interface LastComboProps {
  readonly late: LateCombo;
  readonly onStart: () => void;
}

/** The combo driven last: what stands in the book about it, what the driver meant to do next, and the way to go on. */
export function LastCombo({ late: { named, last, figures }, onStart }: LastComboProps) {
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
      <Button variant="primary" size="between" onClick={onStart}>
        Same as last time
      </Button>
      <div className={styles["next"]}>
        <FaultBoundary what="What to do next">
          <Suspense fallback={null}>
            <NextTime sessionId={last.id} />
          </Suspense>
        </FaultBoundary>
      </div>
    </section>
  );
}
