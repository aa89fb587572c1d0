import { takePlan, waitingPlan } from "#db";
import type { Session } from "#domain";
import { useRows, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { sayPlanSize } from "#words";
import styles from "./PlanPanel.module.css";

/** The driver's own plan, offered to a session that began without it; nothing where none waits. */
export function WaitingPlan({ session }: { readonly session: Session }) {
  const { comboId } = session;
  const plan = useRows((book) => waitingPlan(book, comboId), [comboId]);
  const write = useWrite();
  if (plan === undefined) return null;
  return (
    <section aria-label="Plan" className={styles["waits"]}>
      <p className={styles["second"]}>Your plan waits: {sayPlanSize(plan.lines, { lapMs: undefined })}.</p>
      <Button
        size="between"
        variant="quiet"
        onClick={() =>
          void write((book) => takePlan(book, { sessionId: session.id, lines: plan.lines }), {
            isUndoOffered: true,
          })
        }
      >
        Take it along
      </Button>
    </section>
  );
}
