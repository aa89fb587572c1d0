import { useEffect, useState } from "react";
import { type Change, editTarget, setTarget } from "#db";
import {
  addDays,
  type CalendarDate,
  formatLapTime,
  type Id,
  isCalendarDate,
  type Preferences,
  type Target,
} from "#domain";
import { type DrivenCombo, useFigures, useLogbook, useWriteForm } from "#live";
import { type ComboReview, type ForecastKind, figureAt, rangeOfBests, type SuggestedTargets } from "#stats";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Sheet } from "#ui/Sheet.tsx";
import { questionTarget } from "#words";
import { TargetFields } from "./TargetFields.tsx";
import styles from "./TargetForm.module.css";
import { isMeasured, type ReadTarget, readTarget, type TypedTarget } from "./typedTarget.ts";
import type { TargetEditing } from "./useTypedTarget.ts";

interface TargetFormProps {
  readonly editing: TargetEditing;
  /** Those to choose from; the first one stands in a new form. */
  readonly combos: readonly [DrivenCombo, ...DrivenCombo[]];
  /** The target that is changed; absent for a new one. */
  readonly target?: Target;
  readonly preferences: Preferences;
  readonly today: CalendarDate;
  readonly onClose: () => void;
  /** It is in the book. */
  readonly onStored?: (targetId: Id, comboId: Id) => void;
}

const daysAhead = 28;

/** Sets a target, or changes one. A silly one is questioned once, never refused. */
export function TargetForm(props: TargetFormProps) {
  const { editing, combos, target, preferences, today, onClose, onStored } = props;
  const { surroundings } = useLogbook();
  // One for as long as the form is open, so that pressing twice or trying again makes no second target.
  const [newId] = useState(() => surroundings.newId());
  const [asked, setAsked] = useState<{ readonly about: string; readonly questions: readonly string[] }>();
  const typed = editing.typed ?? blankOf(combos[0], target, today);
  const figures = useFigures("comboReview", { comboId: typed.comboId, period: {}, today });
  const review = figures.value;
  const { by } = typed;
  const isForecast = isCalendarDate(by) && by >= today;
  const suggested = useFigures("suggestedTargets", {
    comboId: typed.comboId,
    kind: typed.kind,
    by: isForecast ? by : addDays(today, daysAhead),
    today,
  }).value;
  const now = review && figureAt(review, typed.kind, Number.POSITIVE_INFINITY);
  const { displayDecimals } = preferences;
  const reading = readTarget(typed, { nearMs: now?.value, displayDecimals });
  const about = JSON.stringify(typed);
  const questions = asked?.about === about ? asked.questions : [];
  const isAgreed = (wanted: ReadTarget) => {
    if (review === undefined) return false;
    const isAnswered = questions.length > 0 || isStoredSo(target, wanted);
    const doubts = isAnswered
      ? []
      : questionsAbout(wanted, review, today, suggested?.known ? suggested.value : undefined);
    if (doubts.length > 0) setAsked({ about, questions: doubts });
    return doubts.length === 0;
  };
  const { box, set, field, submit } = useWriteForm({
    typed: { value: typed, set: (next) => next && editing.set(next) },
    reading,
    isAgreed,
    write: (book, wanted): Promise<Change> => {
      const at = target?.setAt ?? Number.POSITIVE_INFINITY;
      const isSameFigure = target?.kind === wanted.kind;
      const start = isSameFigure ? target.start : review && figureAt(review, wanted.kind, at)?.value;
      const { process, ...fields } = wanted;
      if (target !== undefined)
        return editTarget(book, {
          ...{ id: target.id, expected: target, on: today },
          patch: { ...fields, process, start },
        });
      return setTarget(book, {
        ...fields,
        id: newId,
        comboId: typed.comboId,
        setOn: today,
        ...(process !== undefined && { process }),
        ...(start !== undefined && { start }),
      });
    },
    isUndoOffered: true,
    onStored: () => {
      onClose();
      onStored?.(target?.id ?? newId, typed.comboId);
    },
  });

  useEffect(() => {
    if (editing.isFresh) box.current?.querySelector<HTMLElement>("select, input:checked")?.focus();
  }, [editing.isFresh, box]);

  return (
    <Sheet>
      <form
        ref={box}
        noValidate
        aria-label={target === undefined ? "New target" : "Change the target"}
        className={styles["form"]}
        onSubmit={submit}
        // A key held down is one press: it must not answer the question it raised.
        onKeyDown={(event) => event.key === "Enter" && event.repeat && event.preventDefault()}
      >
        <TargetFields
          typed={typed}
          field={field}
          set={set}
          read={reading.ok ? reading.value : undefined}
          now={now}
          combos={target === undefined ? combos : []}
          today={today}
        />
        <LiveRegion message={questions.join(" ")} />
        {questions.length > 0 && (
          <Notice>
            {questions.map((question) => (
              <p key={question}>{question}</p>
            ))}
          </Notice>
        )}
        <ButtonRow
          others={
            <Button size="between" onClick={onClose}>
              Cancel
            </Button>
          }
          main={
            <Button type="submit" variant="primary" size="between" disabled={review === undefined}>
              {questions.length > 0
                ? "Set it all the same"
                : target === undefined
                  ? "Set target"
                  : "Store changes"}
            </Button>
          }
        />
      </form>
    </Sheet>
  );
}

function blankOf(combo: DrivenCombo, target: Target | undefined, today: CalendarDate): TypedTarget {
  if (target === undefined)
    return { comboId: combo.id, kind: "best", value: "", by: addDays(today, daysAhead), process: "" };
  return {
    comboId: target.comboId,
    kind: isMeasured(target.kind) ? target.kind : "best",
    value: formatLapTime(target.value),
    by: target.by ?? "",
    process: target.process ?? "",
  };
}

/** Whether all that could be questioned stands as it was stored. */
function isStoredSo(target: Target | undefined, { kind, value, by }: ReadTarget): boolean {
  return target?.kind === kind && target.value === value && target.by === by;
}

function questionsAbout(
  target: ReadTarget,
  review: ComboReview,
  today: CalendarDate,
  suggested: SuggestedTargets | undefined,
): readonly string[] {
  const now = (kind: ForecastKind) => figureAt(review, kind, Number.POSITIVE_INFINITY)?.value;
  return questionTarget(target, {
    today,
    now: now(target.kind),
    best: now("best"),
    sessionBests: rangeOfBests(review),
    hardest: suggested?.hardest,
    isByYear: suggested && !suggested.isMostlyAssumption,
  });
}
