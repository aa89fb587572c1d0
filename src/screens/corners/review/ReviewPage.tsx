import { type ComboWithNames, cornerReviewsOfCombo } from "#db";
import type { CalendarDate, Id } from "#domain";
import { useRows, useUntil } from "#live";
import { Notice } from "#ui/Notice.tsx";
import { EarlierReviews } from "./EarlierReviews.tsx";
import styles from "./Review.module.css";
import { ReviewForm } from "./ReviewForm.tsx";
import { lastReviewedSession, type ReviewedSession, reviewedSession } from "./reviewedLaps.ts";

interface ReviewPageProps {
  readonly combo: ComboWithNames;
  /** The review to look at and change; without it, a new one is begun. */
  readonly reviewId?: Id | undefined;
  readonly today: CalendarDate;
  /** Numbers of the corners worth something, the most first. */
  readonly order: readonly number[];
}

/** A replay looked at corner by corner, and the reviews that are there. */
export function ReviewPage({ combo, reviewId, today, order }: ReviewPageProps) {
  const comboId = combo.combo.id;
  const until = useUntil();
  const found = useRows(
    async (book) => {
      const [reviews, last] = await Promise.all([
        cornerReviewsOfCombo(book, comboId),
        lastReviewedSession(book, comboId, until),
      ]);
      const ids = new Set(reviews.flatMap(({ sessionId }) => (sessionId === undefined ? [] : [sessionId])));
      const read = await Promise.all([...ids].map((id) => reviewedSession(book, id)));
      const sessions = read.flatMap((one) => (one === undefined ? [] : [[one.sessionId, one] as const]));
      return { reviews, last, sessions: new Map<Id, ReviewedSession>(sessions) };
    },
    [comboId, until],
  );
  if (found === undefined) return null;
  const { reviews, last, sessions } = found;
  const before = reviews.find(({ id }) => id === reviewId);
  return (
    <div className={styles["page"]}>
      {reviewId !== undefined && before === undefined && (
        <Notice>
          <p>The review this address names is not in the logbook. This is a new one.</p>
        </Notice>
      )}
      <ReviewForm
        key={before?.id ?? "new"}
        combo={combo}
        before={before}
        today={today}
        order={order}
        last={last}
        sessions={sessions}
      />
      <EarlierReviews reviews={reviews} sessions={sessions} openId={before?.id} />
    </div>
  );
}
