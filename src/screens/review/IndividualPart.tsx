import { useState } from "react";
import { IndividualsChart } from "#charts/individuals/IndividualsChart.tsx";
import { preferences, sessionWithRuns } from "#db";
import { type Id, sayDate } from "#domain";
import { useRows } from "#live";
import { printAddress } from "#state/address.ts";
import { sessionReport } from "#stats";
import { Select } from "#ui/Select.tsx";
import { individualsReading, individualsTitle, sayUsual } from "#words";
import type { Looked } from "./looked.ts";
import styles from "./MarkLap.module.css";
import { MarkLap } from "./MarkLap.tsx";
import { NotYet } from "./NotYet.tsx";

const most = 60;

/** The laps of one session one by one, and those that are pointed at, to be remarked upon or left. */
export function IndividualPart({ looked }: { readonly looked: Looked }) {
  const { review, comboName, today } = looked;
  const sessions = review.points
    .filter((point) => point.isPresentPage && point.paceLaps >= 5)
    .slice(-most)
    .reverse();
  const [chosen, setChosen] = useState<Id>();
  const shown = sessions.find(({ sessionId }) => sessionId === chosen) ?? sessions[0];
  if (shown === undefined) return <NotYet title="No session with five pace laps to look at lap by lap" />;
  return (
    <>
      <div className={styles["choice"]}>
        <Select
          label="One session, lap by lap"
          value={shown.sessionId}
          onChange={setChosen}
          options={sessions.map(({ sessionId, date, paceLaps, median, medianDecimals }) => ({
            value: sessionId,
            label: `${sayDate(date)} · ${paceLaps} pace laps${median === undefined ? "" : ` · usual ${sayUsual(median, medianDecimals)}`}`,
          }))}
        />
      </div>
      <OneSession
        key={shown.sessionId}
        sessionId={shown.sessionId}
        name={`${comboName} laps ${shown.date}`}
        today={today}
      />
    </>
  );
}

interface OneSessionProps {
  readonly sessionId: Id;
  readonly name: string;
  readonly today: string;
}

function OneSession({ sessionId, name, today }: OneSessionProps) {
  const found = useRows((book) => sessionWithRuns(book, sessionId), [sessionId]);
  const chosen = useRows(preferences, []);
  if (found === undefined || chosen === undefined) return <p>Reading the laps</p>;
  const { session, runs } = found;
  const { chart } = sessionReport({ session, runs, preferences: chosen });
  const laps = new Map(runs.flatMap((run) => run.laps.map((lap) => [lap.id, { lap, run }] as const)));
  return (
    <>
      <IndividualsChart
        title={individualsTitle(chart)}
        reading={individualsReading(chart)}
        level={3}
        asOf={today}
        fileName={name}
        session={chart}
      />
      {chart.pointedAt.map(({ index, reasons }) => {
        const placed = laps.get(chart.laps[index]?.lapId ?? "");
        return (
          placed !== undefined && (
            <MarkLap
              key={placed.lap.id}
              number={index + 1}
              reasons={reasons}
              lap={placed.lap}
              runId={placed.run.id}
            />
          )
        );
      })}
      <p>
        <a href={printAddress({ place: "log", sessionId })}>The session with all its laps</a>
      </p>
    </>
  );
}
