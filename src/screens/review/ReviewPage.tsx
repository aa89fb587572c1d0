import { lazy, Suspense } from "react";
import type { CalendarDate } from "#domain";
import type { DrivenCombo } from "#live";
import { goTo, type Period } from "#state/address.ts";
import { steadinessReading, steadinessTitle } from "#words";
import { EmptyPeriod } from "./EmptyPeriod.tsx";
import { Finding } from "./Finding.tsx";
import styles from "./ReviewPage.module.css";
import { consistencyOf, progressOf } from "./reviewCharts.ts";
import { sayProgressFound, sayWhatCounts } from "./reviewWords.ts";
import { SessionList } from "./SessionList.tsx";
import { useReview } from "./useReview.ts";
import { useTargetsNow } from "./useTargetsNow.ts";

const ProgressChart = lazy(() =>
  import("#charts/ProgressChart.tsx").then((file) => ({ default: file.ProgressChart })),
);
const ConsistencyChart = lazy(() =>
  import("#charts/ConsistencyChart.tsx").then((file) => ({ default: file.ConsistencyChart })),
);

interface ReviewPageProps {
  readonly combo: DrivenCombo;
  readonly period: Period;
  readonly today: CalendarDate;
}

const openSession = (sessionId: string) => goTo({ place: "log", sessionId });

/** The finding, its charts, and the sessions they are made of. */
export function ReviewPage({ combo, period, today }: ReviewPageProps) {
  const targets = useTargetsNow(combo.id, today);
  const { reviewed, isRenewing } = useReview(combo.id, period, today);
  if (reviewed === undefined || targets === undefined) return <p>Working out the figures</p>;
  const { review, days } = reviewed;
  const about = { asOf: today, level: 2 } as const;
  const progress = sayProgressFound(review);
  const steadiness = { title: steadinessTitle(review), reading: steadinessReading(review) };
  return (
    <div className={styles["page"]} aria-busy={isRenewing}>
      {review.points.length === 0 ? (
        <EmptyPeriod comboId={combo.id} period={reviewed.period} review={review} />
      ) : (
        <>
          <p className={styles["counts"]}>
            {sayWhatCounts(review)}
            {isRenewing && <span className={styles["renewing"]}> · being worked out anew</span>}
          </p>
          <Suspense fallback={<Finding {...progress} isLarge />}>
            <ProgressChart
              {...about}
              {...progress}
              large
              fileName={`${combo.name} progress`}
              {...progressOf(review, days, targets)}
              onOpen={openSession}
            />
          </Suspense>
          <Suspense fallback={<Finding {...steadiness} />}>
            <ConsistencyChart
              {...about}
              {...steadiness}
              fileName={`${combo.name} consistency`}
              sessions={consistencyOf(review)}
              onOpen={openSession}
            />
          </Suspense>
          <SessionList key={JSON.stringify(days)} review={review} />
        </>
      )}
    </div>
  );
}
