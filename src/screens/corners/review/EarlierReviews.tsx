import { type CornerReview, type Id, sayDate } from "#domain";
import { printAddress } from "#state/address.ts";
import { Disclosure } from "#ui/Disclosure.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import styles from "./Review.module.css";
import type { ReviewedSession } from "./reviewedLaps.ts";
import { heldName } from "./WhichLap.tsx";

interface EarlierReviewsProps {
  /** Oldest first. */
  readonly reviews: readonly CornerReview[];
  readonly sessions: ReadonlyMap<Id, ReviewedSession>;
  /** The one that is open on the page. */
  readonly openId: Id | undefined;
}

/** The combo's reviews, the newest first; each opens to be looked at, changed or deleted. */
export function EarlierReviews({ reviews, sessions, openId }: EarlierReviewsProps) {
  const newest = reviews.at(-1);
  if (newest === undefined) return null;
  const answer = `${reviews.length === 1 ? "one" : reviews.length}, the last of ${sayDate(newest.on)}`;
  return (
    <Disclosure title="Reviews kept" level={2} answer={answer}>
      <RuledTable
        caption="Reviews kept, the newest first"
        captionHidden
        columns={[
          { key: "on", title: "of", unbroken: true },
          { key: "corners", title: "corners" },
          { key: "lap", title: "lap" },
        ]}
        rows={reviews.toReversed().map(({ id, comboId, on, corners, sessionId, lapId }) => ({
          id,
          cells: {
            on: (
              <a
                className={styles["review"]}
                href={printAddress({ place: "corners", comboId, part: "review", reviewId: id })}
                aria-current={id === openId ? "true" : undefined}
              >
                {sayDate(on)}
              </a>
            ),
            corners: corners.map(({ number }) => number).join(", "),
            lap:
              lapId === undefined || sessionId === undefined
                ? "the usual lap"
                : heldName({ sessionId, lapId }, sessions.get(sessionId)),
          },
        }))}
      />
    </Disclosure>
  );
}
