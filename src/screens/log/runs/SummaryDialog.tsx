import { addSummaryRun, type Change, editRun } from "#db";
import { type Run, type RunSummary, remarksNamed } from "#domain";
import { asksOfTime, type EntryContext, factsOf, isOdd } from "#entry";
import { useDraft, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Notice } from "#ui/Notice.tsx";
import { useSecondPress } from "../entry/useSecondPress.ts";
import type { SessionData } from "../session/useSession.ts";
import styles from "./RunDialog.module.css";
import { type ReadSummary, readSummary, typedFrom } from "./typedSummary.ts";

interface SummaryDialogProps {
  readonly data: SessionData;
  /** A run that has its summary already, or an open one without laps, which the summary then fills. */
  readonly run: Run | undefined;
  readonly context: EntryContext;
  readonly onClose: () => void;
}

/** A run written as a whole: laps driven, best, usual, number off. */
export function SummaryDialog({ data, run, context, onClose }: SummaryDialogProps) {
  const isStored = run?.summary !== undefined;
  const before = typedFrom(run?.summary);
  const draft = useDraft(`summary ${isStored ? run.id : data.session.id}`, before);
  const asking = useSecondPress();
  const isAsBefore = draft.value.best === before.best && draft.value.usual === before.usual;
  const asksAbout = ({ best, usual }: ReadSummary) => [
    ...(best && draft.value.best !== before.best ? asksOfTime(best, context) : []),
    // Beside a best the usual lap is only too fast where that is. Alone it says that one lap at least was as fast; it
    // becomes no PB, so it is not asked about as a short form.
    ...(usual && draft.value.usual !== before.usual
      ? asksOfTime(
          { ...usual, form: "full" },
          { ...context, isPractice: context.isPractice && best === undefined },
        )
      : []),
  ];
  const { box, field, submit } = useWriteForm({
    typed: {
      value: draft.value,
      set: (typed) => {
        asking.forget();
        draft.set(typed);
      },
    },
    reading: readSummary(draft.value, {
      nearMs: context.usualMs,
      displayDecimals: data.preferences.displayDecimals,
    }),
    isAgreed: (read, { timeStamp }) => asking.isGivenBy(timeStamp, factsOf({ asks: asksAbout(read) })),
    write: (book, read): Promise<Change> => {
      const { laps, best, usual, off } = read;
      const summary: RunSummary = {
        laps,
        ...(best && { bestMs: best.ms, bestDecimals: best.decimals }),
        ...(usual && { usualMs: usual.ms, usualDecimals: usual.decimals }),
        ...(off !== undefined && { off }),
        ...((isOdd({ asks: asksAbout(read) }) || (isAsBefore && run?.summary?.isOdd)) && { isOdd: true }),
      };
      return isStored
        ? editRun(book, { runId: run.id, patch: { summary } })
        : addSummaryRun(book, { sessionId: data.session.id, summary, fills: run?.id });
    },
    isUndoOffered: true,
    onStored: onClose,
  });
  return (
    <Dialog
      title="A run as a summary"
      onClose={onClose}
      actions={
        <ButtonRow
          others={
            <Button size="between" onClick={onClose}>
              Cancel
            </Button>
          }
          main={
            <Button size="between" variant="primary" onClick={submit}>
              Store the run
            </Button>
          }
        />
      }
    >
      <HalfTyped of={draft} />
      <form ref={box} noValidate className={styles["form"]} onSubmit={submit}>
        <Field label="Laps driven" size="between" inputMode="numeric" {...field("laps")} />
        <Field
          label="Best"
          size="between"
          inputMode="decimal"
          {...field("best")}
          hint="1:23.456 or its last digits; leave it empty if not known"
        />
        <Field label="Usual" size="between" inputMode="decimal" {...field("usual")} />
        <Field
          label={`Laps with ${remarksNamed("mistake")}`}
          size="between"
          inputMode="numeric"
          {...field("off")}
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
