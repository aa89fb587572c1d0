import { useState } from "react";
import { addSummaryRun, editRun } from "#db";
import { formatLapTime, type Run, type RunSummary, remarksNamed, runRanges } from "#domain";
import { asksOfTime, type EntryContext, factsOf, isOdd, readTime } from "#entry";
import { useDraft, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Field } from "#ui/Field.tsx";
import type { FieldProblem } from "#ui/FieldFrame.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Notice } from "#ui/Notice.tsx";
import { useToProblem } from "#ui/useToProblem.ts";
import { useSecondPress } from "../entry/useSecondPress.ts";
import { wholeNumber } from "../laps/numbers.ts";
import type { SessionData } from "../session/useSession.ts";
import styles from "./RunDialog.module.css";

interface SummaryDialogProps {
  readonly data: SessionData;
  /** A run that has its summary already, or an open one without laps, which the summary then fills. */
  readonly run: Run | undefined;
  readonly context: EntryContext;
  readonly onClose: () => void;
}

/** The fields of a summary as they were, or would be, typed. */
function typedFrom({ laps, bestMs, bestDecimals, usualMs, usualDecimals, off }: Partial<RunSummary> = {}) {
  return {
    laps: laps === undefined ? "" : String(laps),
    best: bestMs === undefined ? "" : formatLapTime(bestMs, bestDecimals),
    usual: usualMs === undefined ? "" : formatLapTime(usualMs, usualDecimals),
    off: off === undefined ? "" : String(off),
  };
}

/** A run written as a whole: laps driven, best, usual, number off. */
export function SummaryDialog({ data, run, context, onClose }: SummaryDialogProps) {
  const write = useWrite();
  const isStored = run?.summary !== undefined;
  const before = typedFrom(run?.summary);
  const draft = useDraft(`summary ${isStored ? run.id : data.session.id}`, before);
  const { form, toProblem } = useToProblem();
  const [isRefused, setRefused] = useState(false);
  const asking = useSecondPress();
  const { laps, best, usual, off } = draft.value;
  const set = (patch: Partial<ReturnType<typeof typedFrom>>) => {
    asking.forget();
    draft.set({ ...draft.value, ...patch });
  };

  const counted = wholeNumber(laps, "Laps driven", runRanges.laps.most);
  const offs = wholeNumber(off, "Laps with an off or a spin", runRanges.laps.most);
  const near = { nearMs: context.usualMs, displayDecimals: data.preferences.displayDecimals };
  const bestTime = best.trim() === "" ? undefined : readTime(best, near);
  const usualTime = usual.trim() === "" ? undefined : readTime(usual, near);
  const problems = {
    laps: !counted.ok
      ? counted.problem
      : counted.value
        ? undefined
        : "Say how many laps were driven, for example 8.",
    best: bestTime?.ok === false ? bestTime.problem : undefined,
    usual:
      usualTime?.ok === false
        ? usualTime.problem
        : bestTime?.ok && usualTime?.ok && usualTime.ms < bestTime.ms
          ? "The usual lap cannot be faster than the best. Put the two the other way round."
          : undefined,
    off: !offs.ok
      ? offs.problem
      : counted.ok && (offs.value ?? 0) > (counted.value ?? 0)
        ? "There cannot be more laps off than laps driven."
        : undefined,
  };

  const store = async (at: number) => {
    if (Object.values(problems).some(Boolean) || !counted.ok || !offs.ok) {
      setRefused(true);
      toProblem();
      return;
    }
    const asks = [
      ...(bestTime?.ok && best !== before.best ? asksOfTime(bestTime, context) : []),
      // Beside a best the usual lap is only too fast where that is. Alone it says that one lap at least was as fast; it
      // becomes no PB, so it is not asked about as a short form.
      ...(usualTime?.ok && usual !== before.usual
        ? asksOfTime(
            { ...usualTime, form: "full" },
            { ...context, isPractice: context.isPractice && !bestTime?.ok },
          )
        : []),
    ];
    const isAsBefore = best === before.best && usual === before.usual;
    const question = factsOf({ asks });
    if (!asking.isGivenBy(at, question)) return;
    const summary: RunSummary = {
      laps: counted.value ?? 0,
      ...(bestTime?.ok && { bestMs: bestTime.ms, bestDecimals: bestTime.decimals }),
      ...(usualTime?.ok && { usualMs: usualTime.ms, usualDecimals: usualTime.decimals }),
      ...(offs.value !== undefined && { off: offs.value }),
      ...((isOdd({ asks }) || (isAsBefore && run?.summary?.isOdd)) && { isOdd: true }),
    };
    const sessionId = data.session.id;
    const change = await write(
      (book) =>
        isStored
          ? editRun(book, { runId: run.id, patch: { summary } })
          : addSummaryRun(book, { sessionId, summary, fills: run?.id }),
      { isUndoOffered: true },
    );
    if (change === undefined) return;
    draft.set(undefined);
    onClose();
  };
  const shown = (problem: FieldProblem | undefined) => (isRefused ? problem : undefined);
  return (
    <Dialog
      title="A run as a summary"
      onClose={onClose}
      actions={
        <>
          <Button size="between" onClick={onClose}>
            Cancel
          </Button>
          <Button size="between" variant="primary" onClick={({ timeStamp }) => void store(timeStamp)}>
            Store the run
          </Button>
        </>
      }
    >
      <HalfTyped of={draft} />
      <form
        ref={form}
        noValidate
        className={styles["form"]}
        onSubmit={(event) => {
          event.preventDefault();
          void store(event.timeStamp);
        }}
      >
        <Field
          label="Laps driven"
          size="between"
          inputMode="numeric"
          value={laps}
          onChange={(text) => set({ laps: text })}
          problem={shown(problems.laps)}
        />
        <Field
          label="Best"
          size="between"
          inputMode="decimal"
          value={best}
          onChange={(text) => set({ best: text })}
          problem={shown(problems.best)}
          hint="1:23.456 or its last digits; leave it empty if not known"
        />
        <Field
          label="Usual"
          size="between"
          inputMode="decimal"
          value={usual}
          onChange={(text) => set({ usual: text })}
          problem={shown(problems.usual)}
        />
        <Field
          label={`Laps with ${remarksNamed("mistake")}`}
          size="between"
          inputMode="numeric"
          value={off}
          onChange={(text) => set({ off: text })}
          problem={shown(problems.off)}
        />
        <div role="alert">
          {asking.question !== undefined && (
            <Notice tone="caution">
              <p>{asking.question} Store it again if it is right.</p>
            </Notice>
          )}
        </div>
        <button type="submit" hidden>
          Store
        </button>
      </form>
    </Dialog>
  );
}
