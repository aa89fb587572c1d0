import { useState } from "react";
import { endSession } from "#db";
import { lapsInOrder, type Run, type Session, sayMoment } from "#domain";
import { useNow, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";

const idleMs = 3 * 3_600_000;

/** When the driver last did something in a session: wrote a lap, began a run, or started it. */
export function lastDeed(session: Session, runs: readonly Run[]): number {
  return Math.max(
    session.createdAt,
    ...runs.flatMap((run) => [run.createdAt, ...lapsInOrder(run).map(({ createdAt }) => createdAt)]),
  );
}

/** After three idle hours an open session asks: end it at its last lap, or go on? */
export function IdleQuestion({
  session,
  runs,
}: {
  readonly session: Session;
  readonly runs: readonly Run[];
}) {
  const now = useNow();
  const write = useWrite();
  const [goesOn, setGoesOn] = useState(false);
  const last = lastDeed(session, runs);
  const idle = now - last;
  if (goesOn || session.endedAt !== undefined) return null;
  if (idle < 0 && -idle > 60_000)
    return (
      <Notice actions={<Button onClick={() => setGoesOn(true)}>Go on</Button>}>
        <p>
          The clock of this device stands before your last lap. The order of the laps stays as you typed them.
        </p>
      </Notice>
    );
  if (idle < idleMs) return null;
  return (
    <Notice
      actions={
        <>
          <Button
            size="between"
            onClick={() =>
              void write((book) => endSession(book, { sessionId: session.id, at: last }), {
                isUndoOffered: true,
              })
            }
          >
            End it at its last lap
          </Button>
          <Button size="between" onClick={() => setGoesOn(true)}>
            Go on
          </Button>
        </>
      }
    >
      <p>Nothing was logged in this session since {sayMoment(last, session.zone)}. Is it over?</p>
    </Notice>
  );
}
