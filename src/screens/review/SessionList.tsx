import { type ReactNode, useState } from "react";
import { SessionStrip } from "#charts/strip/SessionStrip.tsx";
import { betweenParts, type Id, type Session, sayDate } from "#domain";
import { type NumberedRuns, useRows, useRunsOf } from "#live";
import { printAddress } from "#state/address.ts";
import type { ComboReview, DatedBest, SessionPoint } from "#stats";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { type Row, RuledTable } from "#ui/RuledTable.tsx";
import { sayLapTime, sayUsual } from "#words";
import { ChooseSession, CompareSessions } from "./ChooseSession.tsx";
import styles from "./SessionList.module.css";

const step = 30;

const columns = [
  { key: "session", title: "session" },
  { key: "laps", title: "laps", figures: true },
  { key: "usual", title: "usual", figures: true, strong: true },
  { key: "best", title: "best", figures: true },
] as const;

/** The sessions of the period, newest first, each leading to its page. Only those shown are read. */
export function SessionList({ review }: { readonly review: ComboReview }) {
  const [most, setMost] = useState(step);
  const [isChoosing, setChoosing] = useState(false);
  const shown = review.points.slice(-most).reverse();
  const ids = shown.map(({ sessionId }) => sessionId);
  const sessions = useRows(
    async (book) => {
      const rows = await book.tables.sessions.bulkGet(ids);
      return new Map(rows.flatMap((row) => (row === undefined ? [] : [[row.id, row] as const])));
    },
    [ids.join()],
  );
  const runs = useRunsOf(ids);
  const bestIn = new Map(review.bests.map((best) => [best.sessionId, best]));
  // As it stood when the next session began.
  const pbAfter = (point: SessionPoint) => {
    const next = review.points[review.points.indexOf(point) + 1]?.startedAt ?? Number.POSITIVE_INFINITY;
    return review.bests.findLast(({ at }) => at < next);
  };
  const left = review.points.length - shown.length;
  return (
    <Part title="Sessions">
      {shown.length > 1 && <CompareSessions isChoosing={isChoosing} onChoosing={setChoosing} />}
      <RuledTable
        caption="Sessions, newest first"
        captionHidden
        columns={columns}
        rows={shown.map((point) =>
          rowOf({
            point,
            session: sessions?.get(point.sessionId),
            runs: runs?.get(point.sessionId),
            best: bestIn.get(point.sessionId),
            isChoosing,
            pb: point.isPresentPage ? pbAfter(point) : undefined,
          }),
        )}
      />
      {left > 0 && (
        <div>
          <Button onClick={() => setMost(most + step)}>
            Show {Math.min(step, left)} more of {left}
          </Button>
        </div>
      )}
    </Part>
  );
}

interface ListedSession {
  readonly point: SessionPoint;
  /** Both undefined while they are being read. */
  readonly session: Session | undefined;
  readonly runs: NumberedRuns | undefined;
  readonly best: DatedBest | undefined;
  readonly pb: DatedBest | undefined;
  readonly isChoosing: boolean;
}

function rowOf({ point, session, runs, best, pb, isChoosing }: ListedSession): Row {
  const { sessionId, date, laps, median, medianDecimals, bestClean, isPresentPage } = point;
  return {
    id: sessionId,
    soft: !isPresentPage,
    cells: {
      session: (
        <About
          sessionId={sessionId}
          date={sayDate(date)}
          words={wordsOf(session, best, isPresentPage)}
          note={session?.note ?? ""}
          strip={
            <>
              <SessionStrip
                runs={runs}
                lines={{ pb, usual: median === undefined ? undefined : { ms: median } }}
                name={sayDate(date)}
              />
              <ChooseSession sessionId={sessionId} name={sayDate(date)} isChoosing={isChoosing} />
            </>
          }
        />
      ),
      laps,
      usual: median === undefined ? "—" : sayUsual(median, medianDecimals),
      best: bestClean === undefined ? "—" : sayLapTime(bestClean.ms, bestClean.decimals),
    },
  };
}

function wordsOf(session: Session | undefined, best: DatedBest | undefined, isPresentPage: boolean): string {
  const focus = session === undefined || session.focus === "free" ? undefined : `focus: ${session.focus}`;
  const pb = best && `PB ${sayLapTime(best.ms, best.decimals)}`;
  return [focus, pb, isPresentPage ? undefined : "older page"].filter(Boolean).join(betweenParts);
}

interface AboutProps {
  readonly sessionId: Id;
  readonly date: string;
  readonly words: string;
  readonly note: string;
  readonly strip: ReactNode;
}

function About({ sessionId, date, words, note, strip }: AboutProps) {
  return (
    <div className={styles["about"]}>
      <div className={styles["said"]}>
        <a href={printAddress({ place: "log", sessionId })} className={styles["link"]}>
          {date}
        </a>
        {words !== "" && <span className={styles["words"]}>{words}</span>}
        {note !== "" && (
          <span className={styles["note"]}>
            <Name>{note}</Name>
          </span>
        )}
      </div>
      {strip}
    </div>
  );
}
