import { useRef } from "react";
import type { CalendarDate } from "#domain";
import { type DrivenCombo, useFigures } from "#live";
import { goTo, type ReviewAddress } from "#state/address.ts";
import { largestChange } from "#stats";
import { useHasRoom } from "#ui/useHasRoom.ts";
import { EmptyPeriod } from "./EmptyPeriod.tsx";
import { FirstLook } from "./FirstLook.tsx";
import type { Looked } from "./looked.ts";
import { goToQuestion, Questions } from "./Questions.tsx";
import styles from "./ReviewPage.module.css";
import { sayBefore, sayHolds } from "./reviewWords.ts";
import { SessionList } from "./SessionList.tsx";
import { useOpenParts } from "./useOpenParts.ts";
import { useReview } from "./useReview.ts";

interface ReviewPageProps {
  readonly combo: DrivenCombo;
  readonly address: ReviewAddress;
  readonly today: CalendarDate;
  readonly marginPercent: number;
}

/** The figures at a glance, questions with their answers and pictures, and the sessions they are answered from. */
export function ReviewPage({ combo, address, today, marginPercent }: ReviewPageProps) {
  const { reviewed, isRenewing } = useReview(combo.id, address.period, today);
  const rig = useFigures("rigAnswers", { comboId: combo.id, today });
  const list = useRef<HTMLDivElement>(null);
  if (reviewed === undefined) return <p>Working out the figures</p>;
  const { review, days } = reviewed;
  const looked: Looked = {
    comboId: combo.id,
    comboName: combo.name,
    corners: combo.layout.corners,
    review,
    rig: rig.value ?? [],
    days,
    today,
    on: { asOf: days.to ?? today, today },
    before: sayBefore(reviewed.period),
    isAhead: address.isAhead === true,
    onAhead: (isAhead) => {
      const { isAhead: _, ...without } = { ...address, comboId: combo.id };
      goTo(isAhead ? { ...without, isAhead } : without, "replace");
    },
    onSessions: () => list.current?.focus(),
  };
  return (
    <div className={styles["page"]} aria-busy={isRenewing}>
      {isRenewing && <p className={styles["renewing"]}>The figures are being worked out anew</p>}
      {review.points.length === 0 ? (
        <EmptyPeriod comboId={combo.id} period={reviewed.period} review={review} />
      ) : (
        <>
          <p className={styles["holds"]}>{sayHolds(reviewed.period, days, review, today)}</p>
          <Answers key={combo.id} looked={looked} marginPercent={marginPercent} />
          <div ref={list} tabIndex={-1} className={styles["list"]}>
            <SessionList key={JSON.stringify(days)} review={review} />
          </div>
        </>
      )}
    </div>
  );
}

interface AnswersProps {
  readonly looked: Looked;
  readonly marginPercent: number;
}

function Answers({ looked, marginPercent }: AnswersProps) {
  const isDesk = useHasRoom("desk");
  const parts = useOpenParts(["faster", largestChange(looked.review) ?? ""]);
  const onQuestion = (id: string) => {
    parts.set(id, true);
    goToQuestion(id);
  };
  return (
    <>
      <FirstLook looked={looked} onQuestion={onQuestion} />
      <Questions looked={looked} marginPercent={marginPercent} parts={parts} isDesk={isDesk} />
    </>
  );
}
