import { formatLapTime, type Session, sayDay } from "#domain";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { sayClock } from "#words";
import styles from "./SessionHead.module.css";

interface SessionAboutProps {
  readonly session: Session;
  readonly targetMs: number | undefined;
  readonly targetFrom: string | undefined;
}

/** When the session was, what it was about, and the way to a changed rig; its note once it has ended. */
export function SessionAbout({ session, targetMs, targetFrom }: SessionAboutProps) {
  const about = [
    when(session),
    session.focus === "free" ? undefined : `focus: ${session.focus}`,
    targetMs === undefined ? undefined : `${targetFrom ?? "target"} ${formatLapTime(targetMs)}`,
    session.conditions,
    session.endedAt === undefined ? undefined : "ended",
  ];
  return (
    <div className={styles["below"]}>
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
  );
}

function when({ date, startedAt, zone, isTimeOfDayKnown }: Session): string {
  return isTimeOfDayKnown ? `${sayDay(date)}, ${sayClock(startedAt, zone)}` : sayDay(date);
}
