import { useRef } from "react";
import type { CalendarDate } from "#domain";
import type { DrivenCombo } from "#live";
import type { Period } from "#state/address.ts";
import { EmptyPeriod } from "./EmptyPeriod.tsx";
import { FasterPart } from "./FasterPart.tsx";
import type { Looked } from "./looked.ts";
import { Questions } from "./Questions.tsx";
import styles from "./ReviewPage.module.css";
import { sayBefore } from "./reviewWords.ts";
import { SessionList } from "./SessionList.tsx";
import { useReview } from "./useReview.ts";

interface ReviewPageProps {
  readonly combo: DrivenCombo;
  readonly period: Period;
  readonly today: CalendarDate;
  readonly marginPercent: number;
}

/** Five questions, each with its answer and the picture under it, and the sessions they are answered from. */
export function ReviewPage({ combo, period, today, marginPercent }: ReviewPageProps) {
  const { reviewed, isRenewing } = useReview(combo.id, period, today);
  const list = useRef<HTMLDivElement>(null);
  if (reviewed === undefined) return <p>Working out the figures</p>;
  const { review, days } = reviewed;
  const looked: Looked = {
    comboId: combo.id,
    comboName: combo.name,
    review,
    days,
    today,
    before: sayBefore(reviewed.period),
    onSessions: () => list.current?.focus(),
  };
  return (
    <div className={styles["page"]} aria-busy={isRenewing}>
      {isRenewing && <p className={styles["renewing"]}>The figures are being worked out anew</p>}
      {review.points.length === 0 ? (
        <EmptyPeriod comboId={combo.id} period={reviewed.period} review={review} />
      ) : (
        <>
          <FasterPart looked={looked} />
          <Questions looked={looked} marginPercent={marginPercent} />
          <div ref={list} tabIndex={-1} className={styles["list"]}>
            <SessionList key={JSON.stringify(days)} review={review} />
          </div>
        </>
      )}
    </div>
  );
}
