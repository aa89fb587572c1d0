import { type FormEvent, useEffect, useRef, useState } from "react";
import { editTarget, setTarget } from "#db";
import { addDays, type CalendarDate, formatLapTime, type Preferences, type Target } from "#domain";
import { type DrivenCombo, useFigures, useLogbook, useWrite } from "#live";
import { type ComboReview, type ForecastKind, figureAt, rangeOfBests } from "#stats";
import { Button } from "#ui/Button.tsx";
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
}

const daysAhead = 28;

/** Sets a target, or changes one. A silly one is questioned once, never refused. */
export function TargetForm(props: TargetFormProps) {
  const { editing, combos, target, preferences, today, onClose } = props;
  const { surroundings } = useLogbook();
  const write = useWrite();
  const form = useRef<HTMLFormElement>(null);
  // One for as long as the form is open, so that pressing twice or trying again makes no second target.
  const [newId] = useState(() => surroundings.newId());
  const [refusals, setRefusals] = useState(0);
  const [asked, setAsked] = useState<{ readonly about: string; readonly questions: readonly string[] }>();
  const typed = editing.typed ?? blankOf(combos[0], target, today);
  const figures = useFigures("comboReview", { comboId: typed.comboId, period: {}, today });
  const review = figures.value;
  const now = review && figureAt(review, typed.kind, Number.POSITIVE_INFINITY);
  const { displayDecimals } = preferences;
  const read = readTarget(typed, { nearMs: now?.value, displayDecimals });
  const about = JSON.stringify(typed);
  const questions = asked?.about === about ? asked.questions : [];
  const set = (patch: Partial<TypedTarget>) => editing.set({ ...typed, ...patch });

  useEffect(() => {
    if (editing.isFresh) form.current?.querySelector<HTMLElement>("select, input:checked")?.focus();
  }, [editing.isFresh]);

  useEffect(() => {
    if (refusals > 0) form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [refusals]);

  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (review === undefined) return;
    if (read.target === undefined) return setRefusals(refusals + 1);
    const isAnswered = questions.length > 0 || isStoredSo(target, read.target);
    const doubts = isAnswered ? [] : questionsAbout(read.target, review, today);
    if (doubts.length > 0) return setAsked({ about, questions: doubts });
    if (await store(read.target)) onClose();
  };

  const store = (wanted: ReadTarget) => {
    const at = target?.setAt ?? Number.POSITIVE_INFINITY;
    const isSameFigure = target?.kind === wanted.kind;
    const start = isSameFigure ? target.start : review && figureAt(review, wanted.kind, at)?.value;
    return write(
      (book) => {
        const { process, ...fields } = wanted;
        if (target !== undefined)
          return editTarget(book, { id: target.id, patch: { ...fields, process, start }, expected: target });
        return setTarget(book, {
          ...fields,
          id: newId,
          comboId: typed.comboId,
          setOn: today,
          ...(process !== undefined && { process }),
          ...(start !== undefined && { start }),
        });
      },
      { isUndoOffered: true },
    );
  };

  return (
    <div className={styles["sheet"]}>
      <Sheet>
        <form
          ref={form}
          noValidate
          aria-label={target === undefined ? "New target" : "Change the target"}
          className={styles["form"]}
          onSubmit={(event) => void submit(event)}
          // A key held down is one press: it must not answer the question it raised.
          onKeyDown={(event) => event.key === "Enter" && event.repeat && event.preventDefault()}
        >
          <TargetFields
            typed={typed}
            set={set}
            read={read.target}
            problems={refusals > 0 ? read.problems : {}}
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
          <div className={styles["buttons"]}>
            <Button type="submit" variant="primary" size="between" disabled={review === undefined}>
              {questions.length > 0
                ? "Set it all the same"
                : target === undefined
                  ? "Set target"
                  : "Store changes"}
            </Button>
            <Button size="between" onClick={onClose}>
              Cancel
            </Button>
          </div>
        </form>
      </Sheet>
    </div>
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

function questionsAbout(target: ReadTarget, review: ComboReview, today: CalendarDate): readonly string[] {
  const now = (kind: ForecastKind) => figureAt(review, kind, Number.POSITIVE_INFINITY)?.value;
  return questionTarget(target, {
    today,
    now: now(target.kind),
    best: now("best"),
    sessionBests: rangeOfBests(review),
  });
}
