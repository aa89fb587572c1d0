import { holdsAnything, type NumberedRun } from "#combo";
import { reopenRun, reopenSession } from "#db";
import type { Run, Session } from "#domain";
import { useWrite } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import styles from "./SessionPage.module.css";

interface SessionButtonsProps {
  readonly session: Session;
  /** The run being driven. */
  readonly current: Run | undefined;
  /** The run before it; of an ended session the one that is driven on once it is opened again. */
  readonly last: NumberedRun<Run> | undefined;
  readonly onNextRun: () => void;
  /** Asks for the figures of a summary run, or for the end of the session. */
  readonly onAsk: (dialog: "summary" | "end") => void;
}

/** What can be done next with a session: below its runs while it is open, under its sum once it has ended. */
export function SessionButtons({ session, current, last, onNextRun, onAsk }: SessionButtonsProps) {
  const write = useWrite();
  const isOpen = session.endedAt === undefined;
  const isEmpty = current === undefined || !holdsAnything(current);
  const canGoOn = last !== undefined && last.run.summary === undefined;
  const goOn = canGoOn ? `Go on with run ${last.number}` : "Go on with this session";
  const reopen = () => void write((book) => reopenSession(book, { sessionId: session.id }));
  const summary = (
    <Button size="between" onClick={() => onAsk("summary")}>
      Summary run
    </Button>
  );
  if (!isOpen)
    return (
      <ButtonRow
        others={
          <>
            <Button size="between" onClick={reopen}>
              {goOn}
            </Button>
            {summary}
          </>
        }
        main={
          <Button size="between" variant="primary" onClick={() => goTo({ place: "log" })}>
            Back to Log
          </Button>
        }
      />
    );
  return (
    <div className={styles["buttons"]}>
      {!isEmpty && (
        <Button size="between" onClick={onNextRun}>
          End run
        </Button>
      )}
      {current === undefined && (
        <Button size="between" variant="primary" onClick={onNextRun}>
          Begin a run
        </Button>
      )}
      {isEmpty && canGoOn && (
        <Button size="between" onClick={() => void write((book) => reopenRun(book, { runId: last.run.id }))}>
          {goOn}
        </Button>
      )}
      {summary}
      <Button size="between" onClick={() => onAsk("end")}>
        End session
      </Button>
    </div>
  );
}
