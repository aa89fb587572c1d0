import { lastPlanned } from "#db";
import { sayDate } from "#domain";
import { useRows, useUntil } from "#live";
import { printAddress } from "#state/address.ts";
import { OutcomeRows } from "#ui/OutcomeRows.tsx";
import { Part } from "#ui/Part.tsx";
import { outcomeRows } from "#words";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";

/** What came of the plan of the combo's last session that had one; nothing where none had. */
export function LastPlan({ context: { combo, preferences } }: { readonly context: PlanContext }) {
  const until = useUntil();
  const last = useRows(async (book) => (await lastPlanned(book, combo.id, until)) ?? null, [combo.id, until]);
  if (!last) return null;
  const { session, runs } = last;
  const { plan = [], date, endedAt } = session;
  const rows = outcomeRows(plan, runs, preferences);
  return (
    <div className={styles["past"]}>
      <Part
        title={endedAt === undefined ? "The plan that is being driven" : "What came of the last plan"}
        aside={sayDate(date)}
        ruled
      >
        <OutcomeRows label="Plan and outcome" rows={rows} />
        <p>
          <a href={printAddress({ place: "log", sessionId: session.id })}>
            {endedAt === undefined ? "Go on with it in Log" : "That session"}
          </a>
        </p>
      </Part>
    </div>
  );
}
