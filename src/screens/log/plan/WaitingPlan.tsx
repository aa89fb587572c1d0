import { takePlan, waitingPlan } from "#db";
import type { Session } from "#domain";
import { useRows, useWrite } from "#live";
import { printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { sayPlanSize } from "#words";
import styles from "./PlanPanel.module.css";

interface WaitingPlanProps {
  readonly session: Session;
  /** No run of it has ended: what a run says needs the room that the way to a plan takes. */
  readonly isBeginning: boolean;
}

/** The driver's own plan, offered to a session that began without it; where none waits, the way to make one. */
export function WaitingPlan({ session, isBeginning }: WaitingPlanProps) {
  const { comboId } = session;
  const plan = useRows(async (book) => (await waitingPlan(book, comboId)) ?? null, [comboId]);
  const write = useWrite();
  if (plan === undefined || (plan === null && !isBeginning)) return null;
  if (plan === null)
    return (
      <p className={styles["waits"]}>
        <a className={styles["way"]} href={printAddress({ place: "targets", comboId, part: "plan" })}>
          Plan this session
        </a>
      </p>
    );
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
