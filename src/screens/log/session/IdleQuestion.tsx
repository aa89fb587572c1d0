import { useState } from "react";
import { editSession, endSession } from "#db";
import { lapsInOrder, practiceDay, type Run, type Session, sayDay } from "#domain";
import { useNow, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { sayClock } from "#words";
import { NoteOf } from "../runs/StoredField.tsx";

const idleMs = 3 * 3_600_000;

/** A clock is put right by some seconds now and then; more than this is worth a word. */
const worthSayingMs = 60_000;

/**
 * When the driver last did something in a session: wrote a lap, began a run, or started it. What was done while the clock
 * stood ahead counts only as long as nothing has been done since.
 */
function lastDeed(session: Session, runs: readonly Run[], now: number): number {
  const deeds = [session, ...runs.flatMap((run) => [run, ...lapsInOrder(run)])].map(
    ({ createdAt }) => createdAt,
  );
  const last = deeds.at(-1) ?? session.createdAt;
  const isAhead = (at: number) => at - now > worthSayingMs;
  return isAhead(last) ? last : Math.max(...deeds.filter((at) => !isAhead(at)));
}

/**
 * After three idle hours an open session asks: end it at its last lap, or go on? The note to oneself is asked for in the same
 * breath, as it is wherever a session ends: no second request follows.
 */
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
  const last = lastDeed(session, runs, now);
  const idle = now - last;
  if (goesOn || session.endedAt !== undefined) return null;
  if (-idle > worthSayingMs)
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
      isLong
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
      <p>
        Nothing was logged in this session since {sayDay(practiceDay(last, session.zone, 0))},{" "}
        {sayClock(last, session.zone)}. Is it over?
      </p>
      <NoteOf
        draftKey={`note ${session.id}`}
        label="Note to yourself, if you like"
        hint="You will read it when you next drive this combo."
        value={session.note}
        onStore={(note) =>
          write((book) => editSession(book, { sessionId: session.id, patch: { note }, expected: session }))
        }
      />
    </Notice>
  );
}
