import { useEffect, useRef, useState } from "react";
import { type Change, editTarget, setTarget } from "#db";
import {
  addDays,
  type CalendarDate,
  type Id,
  isCalendarDate,
  isTimeKind,
  type Preferences,
  type Target,
} from "#domain";
import { type DrivenCombo, useFigures, useLogbook, useWriteForm } from "#live";
import {
  type ComboReview,
  rangeOfBests,
  type SuggestedTargets,
  type TargetFigure,
  type TargetState,
} from "#stats";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Sheet } from "#ui/Sheet.tsx";
import { questionTarget } from "#words";
import { TargetFields } from "./TargetFields.tsx";
import styles from "./TargetForm.module.css";
import { type ReadTarget, readTarget, type TypedTarget, typedLaps, writeTarget } from "./typedTarget.ts";
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
/** So many laps in a row stand in a new form: a short run. Our own choice. */
const usualLaps = "5";

/** Sets a target, or changes one. A silly one is questioned once, never refused. */
export function TargetForm(props: TargetFormProps) {
  const { editing, combos, target, preferences, today, onClose, onStored } = props;
  const { surroundings } = useLogbook();
  // One for as long as the form is open, so that pressing twice or trying again makes no second target.
  const [newId] = useState(() => surroundings.newId());
  const [asked, setAsked] = useState<{ readonly about: string; readonly questions: readonly string[] }>();
  // What the driver saw until the first change, to tell what another tab has changed since.
  const seen = useRef(target);
  if (editing.typed === undefined) seen.current = target;
  // What was typed before a field came to the form lacks it.
  const typed = { ...blankOf(combos[0], target, today), ...editing.typed };
  const { comboId, kind, by } = typed;
  const laps = typedLaps(typed);
  const review = useFigures("comboReview", { comboId, period: {}, today }).value;
  const figure = { comboId, kind, laps, today };
  const found = useFigures("targetNow", figure).value;
  const now = kind === "meanOf" && laps === undefined ? undefined : (found ?? undefined);
  const atSetting = useFigures("targetNow", { ...figure, before: target?.setAt }, target === undefined).value;
  const isForecast = isCalendarDate(by) && by >= today;
  const suggested = useFigures(
    "suggestedTargets",
    {
      comboId,
      kind: isTimeKind(kind) ? kind : "best",
      laps,
      by: isForecast ? by : addDays(today, daysAhead),
      today,
    },
    !isTimeKind(kind),
  ).value;
  const { displayDecimals } = preferences;
  const reading = readTarget(typed, { nearMs: now?.value, displayDecimals });
  const about = JSON.stringify(typed);
  const questions = asked?.about === about ? asked.questions : [];
  const isAgreed = (wanted: ReadTarget) => {
    if (review === undefined || found === undefined) return false;
    const isAnswered = questions.length > 0 || isStoredSo(target, wanted);
    const doubts = isAnswered
      ? []
      : questionsAbout(wanted, {
          ...{ now, review, today, ownId: target?.id },
          suggested: suggested?.known ? suggested.value : undefined,
        });
    if (doubts.length > 0) setAsked({ about, questions: doubts });
    return doubts.length === 0;
  };
  const { box, set, field, submit } = useWriteForm({
    typed: { value: typed, set: (next) => next && editing.set(next) },
    reading,
    isAgreed,
    write: (book, wanted): Promise<Change> => {
      if (target !== undefined) {
        const isSameFigure = target.kind === wanted.kind && target.laps === wanted.laps;
        const start = isSameFigure ? target.start : atSetting?.value;
        return editTarget(book, {
          ...{ id: target.id, expected: seen.current ?? target, on: today },
          patch: { ...wanted, start },
        });
      }
      const { laps: inARow, process, why, note, ...fields } = wanted;
      return setTarget(book, {
        ...fields,
        ...{ id: newId, comboId, setOn: today },
        ...(inARow !== undefined && { laps: inARow }),
        ...(process !== undefined && { process }),
        ...(why !== undefined && { why }),
        ...(note !== undefined && { note }),
        ...(now !== undefined && { start: now.value }),
      });
    },
    isUndoOffered: true,
    onStored: () => {
      onClose();
      onStored?.(target?.id ?? newId, comboId);
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
          practice={combos.find(({ id }) => id === comboId)?.combo.practice}
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
            <Button
              type="submit"
              variant="primary"
              size="between"
              disabled={review === undefined || found === undefined}
            >
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
    return {
      ...{ comboId: combo.id, kind: "best", laps: usualLaps, value: "", by: addDays(today, daysAhead) },
      ...{ process: "", why: "", note: "" },
    };
  const { comboId, kind, laps, value, by = "", process = "", why = "", note = "" } = target;
  return {
    ...{ comboId, kind, laps: laps === undefined ? usualLaps : String(laps) },
    ...{ value: writeTarget(kind, value), by, process, why, note },
  };
}

/** Whether all that could be questioned stands as it was stored. */
function isStoredSo(target: Target | undefined, { kind, laps, value, by }: ReadTarget): boolean {
  return target?.kind === kind && target.laps === laps && target.value === value && target.by === by;
}

interface AboutCombo {
  readonly now: TargetFigure | undefined;
  readonly review: ComboReview;
  readonly today: CalendarDate;
  readonly suggested: SuggestedTargets | undefined;
  /** The target that is changed. */
  readonly ownId: Id | undefined;
}

function questionsAbout(
  { kind, laps, value, by }: ReadTarget,
  { now, review, today, suggested, ownId }: AboutCombo,
): readonly string[] {
  const others = review.targets
    .filter(({ target, standing }) => isWanted(target, standing) && target.id !== ownId)
    .map(({ target }) => target);
  return questionTarget(
    { kind, laps, value, by },
    {
      today,
      now: now?.value,
      best: review.bests.at(-1)?.ms,
      sessionBests: rangeOfBests(review),
      hardest: suggested?.hardest,
      isByYear: suggested && !suggested.isMostlyAssumption,
      others,
    },
  );
}

const isWanted = ({ archivedAt }: Target, { kind }: TargetState["standing"]) =>
  archivedAt === undefined && (kind === "open" || kind === "reached before");
