import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { type Change, deleteLap, editLap, type LapPatch, moveLaps, setNotBest } from "#db";
import { canonicalText, type Lap, lapsInOrder, type Run } from "#domain";
import { type EntryContext, factsOf, isOdd, parseEntry, type TypedLap, writeEntry } from "#entry";
import { useWrite, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Notice } from "#ui/Notice.tsx";
import { useHeight } from "#ui/useHeight.ts";
import { Pad } from "../entry/Pad.tsx";
import { PadTools } from "../entry/PadTools.tsx";
import { pressKey } from "../entry/padText.ts";
import { readAs } from "../entry/readAs.ts";
import { useIsTouch } from "../entry/useIsTouch.ts";
import { useLapDraft } from "../entry/useLapDraft.ts";
import { usePad } from "../entry/usePad.ts";
import { useSecondPress } from "../entry/useSecondPress.ts";
import { PickAndDo } from "../putRight/PickAndDo.tsx";
import type { SessionFigures } from "../session/sessionFigures.ts";
import styles from "./LapEditor.module.css";
import { type ReadEdit, readEdit, type TypedEdit } from "./typedEdit.ts";

const nothing = { ok: false, problems: { text: "Write a time or a remark, or delete the lap" } } as const;

interface LapEditorProps {
  readonly lap: Lap;
  readonly number: number;
  readonly run: Run;
  /** The runs on the page, by the numbers they go by there, to move the lap to. */
  readonly shown: SessionFigures["shown"];
  readonly context: EntryContext;
  readonly onDone: () => void;
}

/** One lap in the words of the entry line: change it, delete it, move it, or say that it is no PB. */
export function LapEditor({ lap, number, run, shown, context, onDone }: LapEditorProps) {
  const write = useWrite();
  const before = writeEntry(lap);
  const draft = useLapDraft(lap.id, { sessionId: run.sessionId, runId: run.id, number }, before);
  // Until the driver types, the field follows the lap: that is what they see, and what they change.
  const seen = useRef(lap);
  if (draft.text === before) seen.current = lap;
  const asking = useSecondPress();
  const isTouch = useIsTouch();
  const pad = usePad(lap.id);
  const padHeight = useHeight("--entry-height");
  const [isWriting, setWriting] = useState(false);
  const reading = draft.text.trim() === "" ? nothing : readEdit(draft.text, context);
  /** What the driver changed in the lap; one whose time or remarks are others is judged, and asked about, again. */
  const changedIn = (read: ReadEdit) => {
    const unchanged = parseEntry(writeEntry(seen.current), context);
    const changed = changedFields(unchanged.ok ? unchanged.lap : seen.current, read.lap);
    return { changed, isJudged: "ms" in changed || "remarks" in changed };
  };
  const { box, field, submit } = useWriteForm<TypedEdit, ReadEdit, Change, HTMLDivElement>({
    typed: {
      value: { text: draft.text },
      set: (typed) => {
        asking.forget();
        draft.set(typed?.text);
      },
    },
    reading,
    isAgreed: (read, { timeStamp }) => {
      // What an earlier editor left half typed is on its way here: to store what stands there instead would let it go.
      if (draft.kept.isEmpty && !draft.kept.isRead) return false;
      return asking.isGivenBy(timeStamp, changedIn(read).isJudged ? factsOf(read) : undefined);
    },
    write: async (book, read) => {
      const { changed, isJudged } = changedIn(read);
      const patch = isJudged ? { ...changed, isOdd: isOdd(read) ? (true as const) : undefined } : changed;
      if (Object.keys(patch).length === 0) return { what: "Lap unchanged", edits: [] };
      return editLap(book, { runId: run.id, lapId: lap.id, patch, expected: seen.current });
    },
    isUndoOffered: true,
    onStored: onDone,
  });
  const input = () => box.current?.querySelector("input");
  const isPadOpen = pad.isOpen;
  useEffect(() => {
    const first = box.current?.querySelector("input");
    first?.focus();
    first?.select();
  }, [box]);
  // The pad is there a frame later than the editor, which has to stand above it.
  useEffect(() => {
    if (!isPadOpen) return;
    let frame = requestAnimationFrame(() => {
      frame = requestAnimationFrame(() => box.current?.scrollIntoView?.({ block: "nearest" }));
    });
    return () => cancelAnimationFrame(frame);
  }, [box, isPadOpen]);
  const { text } = draft;
  const set = (next: string) => {
    field("text").onChange(next);
    input()?.focus();
  };
  /** The first digit writes over the lap, which stands selected. */
  const typeDigit = (digit: string) => {
    const { selectionStart = 0, selectionEnd = 0 } = input() ?? {};
    const isAll = text !== "" && selectionStart === 0 && selectionEnd === text.length;
    set(isAll ? digit : pressKey(text, digit));
  };
  const writeNote = () => {
    if (!text.includes("/")) set(`${text} / `);
    setWriting(true);
    input()?.blur();
    requestAnimationFrame(() => {
      setWriting(true);
      input()?.focus();
    });
  };
  const leave = () => {
    draft.set(undefined);
    onDone();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape") {
      event.stopPropagation();
      leave();
    } else if (event.key === "Enter" && event.target instanceof HTMLInputElement) {
      submit(event);
    }
  };
  const remove = async () => {
    if (await write((book) => deleteLap(book, { runId: run.id, lapId: lap.id }), { isUndoOffered: true }))
      leave();
  };
  const move = async (to: string) => {
    const target = to === "new" ? { newRunIn: run.sessionId } : { runId: to };
    if (
      await write((book) => moveLaps(book, { from: run.id, lapIds: [lap.id], to: target }), {
        isUndoOffered: true,
      })
    )
      leave();
  };
  const others = shown.filter((other) => other.run.id !== run.id && other.run.summary === undefined);
  const toggleBest = () =>
    write(
      (book) => setNotBest(book, { runId: run.id, lapId: lap.id, isNotBest: lap.isNotBest === undefined }),
      {
        isUndoOffered: true,
      },
    );
  /** Of a time from memory only the driver knows that it is one. */
  const toggleMemory = () =>
    write(
      (book) => {
        const source = lap.source === "memory" ? ("typed" as const) : ("memory" as const);
        return editLap(book, { runId: run.id, lapId: lap.id, patch: { source } });
      },
      { isUndoOffered: true },
    );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Enter and Escape of the fields inside
    <div ref={box} className={styles["editor"]} onKeyDown={onKeyDown}>
      <Field
        label={`Lap ${number}`}
        {...field("text")}
        size="between"
        inputMode={pad.isThere && !isWriting ? "none" : "text"}
        onClick={() => pad.setOpen(true)}
        onBlur={() => setWriting(false)}
        autoCapitalize="off"
        spellCheck={false}
        hint={
          reading.ok
            ? `${readAs(reading.value.lap)}${isTouch ? "" : " Enter stores it, Escape leaves it as it was."}`
            : "Time, sectors, remarks, / note"
        }
      />
      <div role="alert">
        {asking.question !== undefined && (
          <Notice tone="caution">
            <p>{asking.question} Store it again if it is right.</p>
          </Notice>
        )}
      </div>
      <HalfTyped of={draft.kept} />
      <ButtonRow
        removes={
          <Button size="between" variant="caution" onClick={remove}>
            Delete
          </Button>
        }
        others={
          <>
            {others.length === 0 && lapsInOrder(run).length > 1 && (
              <Button size="between" onClick={() => void move("new")}>
                Move to a new run
              </Button>
            )}
            <Button size="between" onClick={toggleBest}>
              {lap.isNotBest ? "May be my PB" : "Not my PB"}
            </Button>
            {lap.ms !== undefined && lap.source !== "imported" && (
              <Button size="between" onClick={toggleMemory}>
                {lap.source === "memory" ? "Not from memory" : "From memory"}
              </Button>
            )}
            <Button size="between" onClick={leave}>
              Cancel
            </Button>
          </>
        }
        main={
          <Button variant="primary" size="between" onClick={submit}>
            Store
          </Button>
        }
      />
      {isPadOpen && (
        <div ref={padHeight} className={styles["pad"]}>
          <PadTools onClear={text === "" ? undefined : () => set("")} onHide={() => pad.setOpen(false)} />
          <Pad
            text={text}
            onText={set}
            onDigit={typeDigit}
            onClear={() => set("")}
            deed="Store"
            onAdd={submit}
            onNote={writeNote}
            sectors={context.sectors}
            lapNumber={number}
          />
        </div>
      )}
      {others.length > 0 && (
        <PickAndDo
          label="Move to"
          prompt="choose a run"
          none=""
          options={[
            ...others.map((other) => ({ value: other.run.id, label: `run ${other.number}` })),
            { value: "new", label: "a new run" },
          ]}
          deed="Move"
          onDo={move}
        />
      )}
    </div>
  );
}

/** Only what the driver changed, so that another field mended in another tab meanwhile stays. */
function changedFields(seen: TypedLap, typed: TypedLap): LapPatch {
  const { ms, decimals, sectors, sectorDecimals, note, remarks } = typed;
  const isOther = (...fields: readonly (keyof TypedLap)[]) =>
    fields.some((field) => canonicalText(typed[field] ?? null) !== canonicalText(seen[field] ?? null));
  return {
    ...(isOther("ms", "decimals") && { ms, decimals }),
    ...(isOther("sectors", "sectorDecimals") && { sectors, sectorDecimals }),
    ...(isOther("note") && { note }),
    ...(isOther("remarks") && { remarks }),
  };
}
