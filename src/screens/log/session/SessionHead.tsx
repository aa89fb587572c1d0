import { lazy, Suspense, useState } from "react";
import { comboName, formatLapTime, type Session, sayDay } from "#domain";
import { printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { sayClock } from "#words";
import styles from "./SessionHead.module.css";
import type { SessionData } from "./useSession.ts";

const SessionDialog = lazy(() =>
  import("./SessionDialog.tsx").then((file) => ({ default: file.SessionDialog })),
);

interface SessionHeadProps {
  readonly data: SessionData;
  readonly targetMs: number | undefined;
  readonly targetFrom: string | undefined;
  readonly onBigView: () => void;
}

/** Which session this is, and the way to put it right. */
export function SessionHead({ data, targetMs, targetFrom, onBigView }: SessionHeadProps) {
  const { session } = data;
  const [isChanging, setChanging] = useState(false);
  const about = [
    when(session),
    session.focus === "free" ? undefined : `focus: ${session.focus}`,
    targetMs === undefined ? undefined : `${targetFrom ?? "target"} ${formatLapTime(targetMs)}`,
    session.conditions,
    session.endedAt === undefined ? undefined : "ended",
  ];
  return (
    <div className={styles["head"]}>
      <div className={styles["words"]}>
        <h1 className={styles["title"]} tabIndex={-1}>
          <Name>{comboName(data)}</Name>
        </h1>
        <p className={styles["about"]}>
          <Name>{about.filter(Boolean).join(" · ")}</Name>
          {session.endedAt === undefined && (
            <>
              {" "}
              <a
                className={styles["changed"]}
                href={printAddress({ place: "rig", change: { sessionId: session.id } })}
              >
                Something changed
              </a>
            </>
          )}
        </p>
        {session.endedAt !== undefined && session.note.trim() !== "" && (
          <p className={styles["note"]}>
            <Name>{session.note}</Name>
          </p>
        )}
      </div>
      <div className={styles["buttons"]}>
        {session.endedAt === undefined && (
          <Button size="between" variant="quiet" onClick={onBigView}>
            Big view
          </Button>
        )}
        <Button size="between" variant="quiet" onClick={() => setChanging(true)}>
          Session
        </Button>
      </div>
      {isChanging && (
        <Suspense fallback={null}>
          <SessionDialog data={data} onClose={() => setChanging(false)} />
        </Suspense>
      )}
    </div>
  );
}

function when({ date, startedAt, zone, isTimeOfDayKnown }: Session): string {
  return isTimeOfDayKnown ? `${sayDay(date)}, ${sayClock(startedAt, zone)}` : sayDay(date);
}
