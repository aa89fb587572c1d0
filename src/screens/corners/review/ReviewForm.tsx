import { addCornerReview, type ComboWithNames, deleteCornerReview, editCornerReview } from "#db";
import type { CalendarDate, CornerReview } from "#domain";
import { useWrite, useWriteForm } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Part } from "#ui/Part.tsx";
import { sayCornerKind } from "#words";
import { CornerNumbers } from "./CornerNumbers.tsx";
import { CornerStep } from "./CornerStep.tsx";
import styles from "./Review.module.css";
import { ReviewSetUp } from "./ReviewSetUp.tsx";
import { ReviewSummary } from "./ReviewSummary.tsx";
import { asksOf } from "./reviewCorners.ts";
import { type ReadReview, type ReviewDraft, readReview } from "./reviewDraft.ts";
import { dated, type ReviewedSession } from "./reviewedLaps.ts";
import { useLeft } from "./useLeft.ts";
import { type Review, useReview } from "./useReview.ts";

interface ReviewFormProps {
  readonly combo: ComboWithNames;
  /** The review that is changed; without one, it is a new one. */
  readonly before: CornerReview | undefined;
  readonly today: CalendarDate;
  /** Numbers of the corners worth something, the most first. */
  readonly order: readonly number[];
  readonly last: ReviewedSession | undefined;
  /** The sessions of reviews that are there, by id. */
  readonly sessions: ReadonlyMap<string, ReviewedSession>;
}

/** One review: corner by corner, then the table of all, then one write. */
export function ReviewForm({ combo, before, today, order, last, sessions }: ReviewFormProps) {
  const { layout, car } = combo;
  const review = useReview(combo, before, today, order);
  const left = useLeft();
  const { draft, scale, corners, chosen, at, set } = review;
  if (!draft.isRead) return null;
  if (corners.length === 0)
    return (
      <Part title="Which corners?">
        <HalfTyped of={draft} />
        <Why />
        <p>
          Nothing is known of this layout’s corners yet, and numbers are enough: name those you want to look
          at.{order.length > 0 && " Those your remarks name stand ready."}
        </p>
        <CornerNumbers isFirst ready={order} onTold={review.tell} />
      </Part>
    );
  const { lap } = draft.value;
  const sessionOf = (id: string) => (id === last?.sessionId ? last : sessions.get(id));
  return (
    <>
      <HalfTyped of={draft} />
      {at === chosen[0] && <Why />}
      <ReviewSetUp
        lap={lap}
        onLap={(lookedAt) => set({ lap: lookedAt })}
        last={last}
        held={lap && sessionOf(lap.sessionId)}
        unit={scale.unit}
        onUnit={review.typeIn}
        carWidth={scale.carWidth}
        isCarAssumed={car.width === undefined}
        corners={corners}
        chosen={chosen}
        onChosen={review.choose}
        onTold={review.tell}
      />
      {at === undefined ? (
        <p>Choose at least one corner above.</p>
      ) : at === "all" ? (
        <Table
          review={review}
          combo={combo}
          before={before}
          left={left}
          dates={dated(draft.value, before, today, lap && sessionOf(lap.sessionId))}
        />
      ) : (
        <Step
          key={at}
          review={review}
          at={at}
          asks={asksOf(layout.corners.find(({ number }) => number === at))}
        />
      )}
    </>
  );
}

interface StepProps {
  readonly review: Review;
  readonly at: number;
  readonly asks: ReturnType<typeof asksOf>;
}

function Step({ review, at, asks }: StepProps) {
  const { draft, scale, chosen, set, go, sayAt } = review;
  const { lines, kinds, emptied, isFromTable } = draft.value;
  const place = chosen.indexOf(at);
  const previous = chosen[place - 1];
  const isLast = isFromTable === true || place === chosen.length - 1;
  const sayBefore = (number: number) => {
    const said = sayAt(number);
    return `Corner ${number}: ${said === "" ? "skipped" : (said ?? "not understood")}`;
  };
  return (
    <CornerStep
      corner={review.about(at)}
      progress={`${place + 1} of ${chosen.length}`}
      before={previous === undefined ? undefined : sayBefore(previous)}
      scale={scale}
      line={lines[at] ?? ""}
      onLine={(line) => set({ at, lines: { ...lines, [at]: line } })}
      emptied={emptied?.[at]}
      onEmpty={() =>
        set({ at, lines: { ...lines, [at]: "" }, emptied: { ...emptied, [at]: lines[at] ?? "" } })
      }
      asks={asks}
      kind={kinds[at] ?? {}}
      onKind={(kind) => set({ at, kinds: { ...kinds, [at]: kind } })}
      isLast={isLast}
      onNext={() => go(isLast ? "all" : chosen[place + 1])}
      onBack={previous === undefined ? undefined : () => go(previous)}
      isReached={review.hasMoved}
    />
  );
}

interface TableProps {
  readonly review: Review;
  readonly combo: ComboWithNames;
  readonly before: CornerReview | undefined;
  readonly dates: ReturnType<typeof dated>;
  readonly left: ReturnType<typeof useLeft>;
}

function Table({ review, combo: { combo, layout }, before, dates, left }: TableProps) {
  const { draft, scale, chosen, go, sayAt, about } = review;
  const { lines, kinds } = draft.value;
  const write = useWrite();
  const { submit, field, isBusy } = useWriteForm<
    ReviewDraft,
    ReadReview,
    Awaited<ReturnType<typeof editCornerReview>>
  >({
    typed: draft,
    reading: readReview(draft.value, { chosen, scale, known: layout.corners, before }),
    write: (book, { corners, learnt }) => {
      const told = { layoutId: layout.id, corners: learnt };
      if (before === undefined) return addCornerReview(book, { comboId: combo.id, ...dates, corners }, told);
      const patch = { sessionId: undefined, lapId: undefined, ...dates, corners };
      return editCornerReview(book, { id: before.id, patch, expected: before }, told);
    },
    isUndoOffered: true,
    onStored: () => {
      left.current = "answer";
      goTo({ place: "corners", comboId: combo.id });
    },
  });
  const remove = async ({ id }: CornerReview) => {
    if (!(await write((book) => deleteCornerReview(book, id), { isUndoOffered: true }))) return;
    draft.set(undefined);
    left.current = "review";
    goTo({ place: "corners", comboId: combo.id, part: "review" });
  };
  return (
    <ReviewSummary
      rows={chosen.map((number) => ({
        number,
        name: about(number).name,
        seen: (sayAt(number) ?? lines[number]) || undefined,
        isWrong: sayAt(number) === undefined,
        kind: sayCornerKind({
          bend: kinds[number]?.bend ?? about(number).bend,
          after: kinds[number]?.after ?? about(number).after,
        }),
      }))}
      problem={field("lines").problem}
      isBusy={isBusy}
      onChange={(number) => go(number, true)}
      onStore={submit}
      removes={
        before && (
          <Button variant="caution" size="between" onClick={() => void remove(before)}>
            Delete this review
          </Button>
        )
      }
      isReached={review.hasMoved}
    />
  );
}

/** Said once, where a review begins. */
function Why() {
  return (
    <p className={styles["why"]}>
      Look at the replay from outside the car. From the seat, half a car’s width left at a kerb cannot be
      seen.
    </p>
  );
}
