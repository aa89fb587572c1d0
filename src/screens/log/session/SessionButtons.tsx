import { reopenSession } from "#db";
import { lapsInOrder, type Run, type Session } from "#domain";
import { useWrite } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import styles from "./SessionPage.module.css";

interface SessionButtonsProps {
  readonly session: Session;
  /** The run being driven. */
  readonly current: Run | undefined;
  readonly onNextRun: () => void;
  /** Asks for the figures of a summary run, or for the end of the session. */
  readonly onAsk: (dialog: "summary" | "end") => void;
}

/** What can be done next with a session, below its runs. */
export function SessionButtons({ session, current, onNextRun, onAsk }: SessionButtonsProps) {
  const write = useWrite();
  const isOpen = session.endedAt === undefined;
  return (
    <div className={styles["buttons"]}>
      {isOpen && current && lapsInOrder(current).length > 0 && (
        <Button size="between" onClick={onNextRun}>
          End run
        </Button>
      )}
      {isOpen && current === undefined && (
        <Button size="between" variant="primary" onClick={onNextRun}>
          Begin a run
        </Button>
      )}
      <Button size="between" onClick={() => onAsk("summary")}>
        Summary run
      </Button>
      {isOpen ? (
        <Button size="between" onClick={() => onAsk("end")}>
          End session
        </Button>
      ) : (
        <>
          <Button
            size="between"
            onClick={() => void write((book) => reopenSession(book, { sessionId: session.id }))}
          >
            Go on with this session
          </Button>
          <Button size="between" onClick={() => goTo({ place: "log" })}>
            Back to Log
          </Button>
        </>
      )}
    </div>
  );
}
