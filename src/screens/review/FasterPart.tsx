import { Suspense } from "react";
import { Disclosure } from "#ui/Disclosure.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { bandMeaning, progressBy100Laps, sayCurve, sayOneEvening, sayPracticeRate, sayReason } from "#words";
import styles from "./FasterPart.module.css";
import { Finding } from "./Finding.tsx";
import { LeftOut } from "./LeftOut.tsx";
import { type Looked, openSession } from "./looked.ts";
import { isCurveDrawn, progressOf } from "./reviewCharts.ts";
import { sayProgressFound, sayWhatCounts } from "./reviewWords.ts";

const ProgressChart = laterPart(() =>
  import("#charts/progress/ProgressChart.tsx").then((file) => file.ProgressChart),
);

interface FasterPartProps {
  readonly looked: Looked;
}

/** Am I getting faster? What was driven, and on request what is to come. */
export function FasterPart({ looked }: FasterPartProps) {
  const { review, comboName, today, on, isAhead, onAhead, onSessions } = looked;
  const found = sayProgressFound(review, on, isAhead);
  const evening = sayOneEvening(review, on);
  return (
    <div className={styles["part"]}>
      <Suspense fallback={<Finding {...found} isLarge />}>
        <ProgressChart
          {...found}
          large
          level={2}
          asOf={today}
          fileName={`${comboName} progress`}
          {...progressOf(looked)}
          isAhead={isAhead}
          onAhead={onAhead}
          onOpen={openSession}
        />
      </Suspense>
      {evening !== "" && <p className={styles["evening"]}>{evening}</p>}
      <Disclosure
        title="Trend and forecast"
        answer="by a hundred laps, where it levels off, what it rests on"
      >
        <ul className={styles["more"]}>
          {moreWords(looked).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </Disclosure>
      <LeftOut onSessions={onSessions}>{sayWhatCounts(review)}</LeftOut>
    </div>
  );
}

function moreWords({ review }: Looked): string[] {
  const { curve } = review;
  return [
    progressBy100Laps(review),
    ...(curve.known
      ? [
          sayCurve(curve.value),
          sayPracticeRate(curve.value.rate),
          !isCurveDrawn(curve)
            ? "Curve and bands are drawn from 4 sessions with 5 pace laps on."
            : curve.value.ahead.length > 0
              ? bandMeaning
              : "",
          "The curve and its bands rest on all sessions of this page with 5 pace laps, whatever the period.",
          curve.value.sessionsLeftOut > 0
            ? `Of them the last ${curve.value.sessions}; ${curve.value.sessionsLeftOut} older ones are left out.`
            : "",
        ]
      : [`No forecast yet: ${sayReason(curve.reason)}.`]),
  ].filter((sentence) => sentence !== "");
}
