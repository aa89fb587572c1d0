import { takePlan } from "#db";
import type { Session } from "#domain";
import { useLogbook, useWrite } from "#live";
import { goTo, printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import styles from "./Plan.module.css";
import type { ShownPlan } from "./useShownPlan.ts";

interface OpenSessionProps {
  readonly session: Session;
  readonly plan: ShownPlan;
}

/** A session of the combo that is open now: it takes the plan along, or has one of its own. */
export function OpenSession({ session, plan: { lines, isOwn } }: OpenSessionProps) {
  const { newId } = useLogbook().surroundings;
  const write = useWrite();
  const address = { place: "log", sessionId: session.id } as const;
  const hasPlan = session.plan !== undefined && session.plan.length > 0;
  const take = async () => {
    // A draft goes on being shown: were its ids those of the session, a plan made of it would count as begun.
    const taken = isOwn ? lines : lines.map((line) => ({ ...line, id: newId() }));
    const isTaken = await write((book) => takePlan(book, { sessionId: session.id, lines: taken }), {
      isUndoOffered: true,
    });
    if (isTaken) goTo(address);
  };
  return (
    <section aria-label="Open session" className={styles["open"]}>
      <p>
        {hasPlan
          ? "A session is open with a plan of its own. This one is for the next."
          : "A session is open without a plan. This plan can still go along."}
      </p>
      <div className={styles["ways"]}>
        {!hasPlan && (
          <Button size="between" variant="primary" onClick={() => void take()}>
            Take it into the open session
          </Button>
        )}
        <a href={printAddress(address)}>Go on in Log</a>
      </div>
    </section>
  );
}
