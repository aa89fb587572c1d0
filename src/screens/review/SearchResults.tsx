import { useState } from "react";
import { SessionStrip } from "#charts/strip/SessionStrip.tsx";
import { formatLapTime, remarkInWords, sayDate } from "#domain";
import { type FoundLap, type FoundSession, useRunsOf } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { ChooseSession, CompareSessions } from "./ChooseSession.tsx";
import styles from "./Search.module.css";

const sessionColumns = [
  { key: "day", title: "session" },
  { key: "laps", title: "laps", figures: true },
] as const;

/** The sessions found, the newest first, each leading to its page. */
export function FoundSessions({ sessions }: { readonly sessions: readonly FoundSession[] }) {
  const runs = useRunsOf(sessions.map(({ sessionId }) => sessionId));
  const [isChoosing, setChoosing] = useState(false);
  return (
    <div>
      {sessions.length > 1 && <CompareSessions isChoosing={isChoosing} onChoosing={setChoosing} />}
      <RuledTable
        caption="Sessions found, newest first"
        columns={sessionColumns}
        rows={sessions.map(({ sessionId, date, comboName, laps, found, focus, note }) => ({
          id: sessionId,
          cells: {
            day: (
              <>
                <span className={styles["head"]}>
                  <a href={printAddress({ place: "log", sessionId })}>{sayDate(date)}</a>
                  <SessionStrip runs={runs?.get(sessionId)} name={sayDate(date)} />
                  <ChooseSession sessionId={sessionId} name={sayDate(date)} isChoosing={isChoosing} />
                </span>
                <span className={styles["detail"]}>
                  <Name>{comboName}</Name> · focus: {focus}
                </span>
                {note !== "" && (
                  <span className={styles["note"]}>
                    <Name>{note}</Name>
                  </span>
                )}
              </>
            ),
            laps: found > 0 ? `${laps}, ${found} found` : laps,
          },
        }))}
      />
    </div>
  );
}

const lapColumns = [
  { key: "lap", title: "lap" },
  { key: "time", title: "time", figures: true, strong: true },
  { key: "remarks", title: "remarks and note" },
] as const;

/** The laps found, the newest first, each leading to its place on its session's page. */
export function FoundLaps({ laps }: { readonly laps: readonly FoundLap[] }) {
  return (
    <RuledTable
      caption="Laps found, newest first"
      columns={lapColumns}
      rows={laps.map((lap) => ({
        id: lap.lapId,
        cells: {
          lap: (
            <>
              <a href={printAddress({ place: "log", sessionId: lap.sessionId, lapId: lap.lapId })}>
                {sayDate(lap.date)}, run {lap.runNumber}, lap {lap.lapNumber}
              </a>
              <span className={styles["detail"]}>
                <Name>{lap.comboName}</Name>
              </span>
            </>
          ),
          time: lap.ms === undefined ? "no time" : formatLapTime(lap.ms, lap.decimals),
          remarks: <Name>{about(lap)}</Name>,
        },
      }))}
    />
  );
}

function about({ remarks, note, guest }: FoundLap): string {
  const parts = [
    ...remarks.map(remarkInWords),
    ...(guest === undefined ? [] : [guest === "" ? "a guest drove" : `${guest} drove`]),
    ...(note === undefined ? [] : [note]),
  ];
  return parts.join(" · ");
}
