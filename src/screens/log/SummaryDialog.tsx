import { useState } from "react";
import { addSummaryRun, editRun } from "#db";
import type { Run, RunSummary } from "#domain";
import { readTime } from "#entry";
import { useDraft, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Field } from "#ui/Field.tsx";
import type { FieldProblem } from "#ui/FieldFrame.tsx";
import { wholeNumber } from "./numbers.ts";
import styles from "./RunDialog.module.css";
import type { SessionData } from "./useSession.ts";

interface SummaryDialogProps {
  readonly data: SessionData;
  /** An open run without laps, which the summary then fills. */
  readonly emptyRun: Run | undefined;
  readonly usualMs: number | undefined;
  readonly onClose: () => void;
}

const blank = { laps: "", best: "", usual: "", off: "" };

/** A run written as a whole: laps driven, best, usual, number off. */
export function SummaryDialog({ data, emptyRun, usualMs, onClose }: SummaryDialogProps) {
  const write = useWrite();
  const draft = useDraft(`summary ${data.session.id}`, blank);
  const [isRefused, setRefused] = useState(false);
  const { laps, best, usual, off } = draft.value;
  const set = (patch: Partial<typeof blank>) => draft.set({ ...draft.value, ...patch });

  const counted = wholeNumber(laps, "Laps driven", 9999);
  const offs = wholeNumber(off, "Laps with an off or a spin", 9999);
  const context = { nearMs: usualMs, displayDecimals: data.preferences.displayDecimals };
  const bestTime = best.trim() === "" ? undefined : readTime(best, context);
  const usualTime = usual.trim() === "" ? undefined : readTime(usual, context);
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

  const store = async () => {
    if (Object.values(problems).some(Boolean) || !counted.ok || !offs.ok) return setRefused(true);
    const summary: RunSummary = {
      laps: counted.value ?? 0,
      ...(bestTime?.ok && { bestMs: bestTime.ms, bestDecimals: bestTime.decimals }),
      ...(usualTime?.ok && { usualMs: usualTime.ms, usualDecimals: usualTime.decimals }),
      ...(offs.value !== undefined && { off: offs.value }),
    };
    const sessionId = data.session.id;
    const change = await write(
      (book) =>
        emptyRun
          ? editRun(book, { runId: emptyRun.id, patch: { summary, endedAt: book.clock() } })
          : addSummaryRun(book, { sessionId, summary, settings: { endedAt: book.clock() } }),
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
          <Button size="between" variant="primary" onClick={store}>
            Store the run
          </Button>
        </>
      }
    >
      <form
        className={styles["form"]}
        onSubmit={(event) => {
          event.preventDefault();
          void store();
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
          label="Laps with an off, a spin or a contact"
          size="between"
          inputMode="numeric"
          value={off}
          onChange={(text) => set({ off: text })}
          problem={shown(problems.off)}
        />
        <button type="submit" hidden>
          Store
        </button>
      </form>
    </Dialog>
  );
}
