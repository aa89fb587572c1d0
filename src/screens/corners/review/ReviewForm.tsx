import { useRef } from "react";
import { addCornerReview, type ComboWithNames, deleteCornerReview, editCornerReview } from "#db";
import { assumedCarWidth, type CalendarDate, type CornerReview, type GapScale } from "#domain";
import { readGaps } from "#entry";
import { useDraft, useWrite, useWriteForm } from "#live";
import { goTo } from "#state/address.ts";
import { useDevice } from "#state/device.ts";
import { Button } from "#ui/Button.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Part } from "#ui/Part.tsx";
import { sayCornerKind, saySeenCorner } from "#words";
import { useCornersTonight } from "../useCornersTonight.ts";
import { CornerNumbers, type ToldCorners } from "./CornerNumbers.tsx";
import { CornerStep } from "./CornerStep.tsx";
import styles from "./Review.module.css";
import { ReviewSetUp } from "./ReviewSetUp.tsx";
import { ReviewSummary } from "./ReviewSummary.tsx";
import { allCorners, asksOf } from "./reviewCorners.ts";
import {
  draftOf,
  draftWords,
  inOtherUnit,
  nothingSeen,
  type ReadReview,
  type ReviewDraft,
  readReview,
} from "./reviewDraft.ts";
import { dated, type ReviewedSession } from "./reviewedLaps.ts";

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

/** So many corners stand ready where they are known by their worth: as many as an evening has room for. */
const mostReady = 3;

/** One review: corner by corner, then the table of all, then one write. */
export function ReviewForm({ combo, before, today, order, last, sessions }: ReviewFormProps) {
  const { layout, car } = combo;
  const comboId = combo.combo.id;
  const carWidth = car.width ?? assumedCarWidth;
  const deviceUnit = useDevice(({ gapUnit }) => gapUnit ?? "cars");
  const changeDevice = useDevice((device) => device.change);
  const tonight = useCornersTonight(comboId, today);
  const write = useWrite();
  const hasMoved = useRef(false);
  const draft = useDraft<ReviewDraft>(
    `corner review ${comboId}${before === undefined ? "" : ` ${before.id}`}`,
    before === undefined ? nothingSeen : draftOf(before, { unit: deviceUnit, carWidth }),
    draftWords,
  );
  const typed = draft.value;
  const scale: GapScale = { unit: typed.unit ?? deviceUnit, carWidth };
  const corners = allCorners(layout.corners, typed.told);
  const isThere = (number: number) => corners.some((corner) => corner.number === number);
  const ready = (tonight.numbers ?? order.slice(0, mostReady)).filter(isThere);
  const numbers = ready.length > 0 ? ready : corners.map(({ number }) => number);
  const chosen = (typed.chosen ?? numbers).toSorted((a, b) => a - b);
  const set = (patch: Partial<ReviewDraft>) => draft.set({ ...typed, unit: scale.unit, chosen, ...patch });

  const leave = () => goTo({ place: "corners", comboId });
  const { submit, field, isBusy } = useWriteForm<
    ReviewDraft,
    ReadReview,
    Awaited<ReturnType<typeof editCornerReview>>
  >({
    typed: draft,
    reading: readReview(typed, { chosen, scale, known: layout.corners, before }),
    write: (book, { corners: seen, learnt }) => {
      const review = { ...dated(typed, before, today, last, sessions), corners: seen };
      const told = { layoutId: layout.id, corners: learnt };
      if (before === undefined) return addCornerReview(book, { comboId, ...review }, told);
      const patch = { sessionId: undefined, lapId: undefined, ...review };
      return editCornerReview(book, { id: before.id, patch, expected: before }, told);
    },
    isUndoOffered: true,
    onStored: leave,
  });
  if (!draft.isRead) return null;

  const onTold = ({ chosen: named, all }: ToldCorners) => {
    const next = [...new Set([...(corners.length === 0 ? [] : chosen), ...named])];
    set({ told: [...new Set([...typed.told, ...all])], chosen: next.sort((a, b) => a - b) });
  };
  if (corners.length === 0)
    return (
      <Part title="Which corners?">
        <HalfTyped of={draft} />
        <Why />
        <p>
          Nothing is known of this layout’s corners yet, and numbers are enough: name those you want to look
          at.
        </p>
        <CornerNumbers isFirst onTold={onTold} />
      </Part>
    );

  const at =
    typed.at === "all" || (typed.at !== undefined && chosen.includes(typed.at)) ? typed.at : chosen[0];
  const go = (to: ReviewDraft["at"], isFromTable = false) => {
    hasMoved.current = true;
    set({ at: to, isFromTable });
  };
  const seenAt = (number: number) => {
    const reading = readGaps(typed.lines[number] ?? "", scale);
    return reading.ok ? saySeenCorner(reading.seen, scale) : undefined;
  };
  const sayBefore = (number: number) =>
    `Corner ${number}: ${seenAt(number) === "" ? "skipped" : (seenAt(number) ?? "not understood")}`;
  const about = (number: number) => corners.find((corner) => corner.number === number) ?? { number };
  const kindOf = (number: number) => typed.kinds[number] ?? {};
  const place = typeof at === "number" ? chosen.indexOf(at) : chosen.length;
  const previous = chosen[place - 1];
  const isLast = typed.isFromTable === true || place === chosen.length - 1;
  const remove = async () => {
    if (before === undefined) return;
    if (!(await write((book) => deleteCornerReview(book, before.id), { isUndoOffered: true }))) return;
    draft.set(undefined);
    goTo({ place: "corners", comboId, part: "review" });
  };
  return (
    <>
      <HalfTyped of={draft} />
      {at === chosen[0] && <Why />}
      <ReviewSetUp
        lap={typed.lap}
        onLap={(lap) => set({ lap })}
        last={last}
        held={
          typed.lap &&
          (sessions.get(typed.lap.sessionId) ?? (last?.sessionId === typed.lap.sessionId ? last : undefined))
        }
        unit={scale.unit}
        onUnit={(unit) => {
          changeDevice({ gapUnit: unit });
          set({ unit, lines: inOtherUnit(typed.lines, scale, unit) });
        }}
        carWidth={carWidth}
        isCarAssumed={car.width === undefined}
        corners={corners}
        chosen={chosen}
        onChosen={(numbersNow) => {
          if (before === undefined) tonight.choose(numbersNow);
          set({ chosen: numbersNow });
        }}
        onTold={onTold}
      />
      {at === undefined ? (
        <p>Choose at least one corner above.</p>
      ) : at === "all" ? (
        <ReviewSummary
          rows={chosen.map((number) => ({
            number,
            name: about(number).name,
            seen: (seenAt(number) ?? typed.lines[number]) || undefined,
            isWrong: seenAt(number) === undefined,
            kind: sayCornerKind({
              bend: kindOf(number).bend ?? about(number).bend,
              after: kindOf(number).after ?? about(number).after,
            }),
          }))}
          problem={field("lines").problem}
          isBusy={isBusy}
          onChange={(number) => go(number, true)}
          onStore={submit}
          removes={
            before && (
              <Button variant="caution" size="between" onClick={() => void remove()}>
                Delete this review
              </Button>
            )
          }
          isReached={hasMoved.current}
        />
      ) : (
        <CornerStep
          key={at}
          corner={about(at)}
          progress={`${place + 1} of ${chosen.length}`}
          before={previous === undefined ? undefined : sayBefore(previous)}
          scale={scale}
          line={typed.lines[at] ?? ""}
          onLine={(line) => set({ at, lines: { ...typed.lines, [at]: line } })}
          asks={asksOf(layout.corners.find(({ number }) => number === at))}
          kind={kindOf(at)}
          onKind={(kind) => set({ at, kinds: { ...typed.kinds, [at]: kind } })}
          isLast={isLast}
          onNext={() => go(isLast ? "all" : chosen[place + 1])}
          onBack={previous === undefined ? undefined : () => go(previous)}
          isReached={hasMoved.current}
        />
      )}
    </>
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
