import { useEffect, useMemo, useRef, useState } from "react";
import { addLap, type NewLap } from "#db";
import type { Id, Run } from "#domain";
import {
  type Ask,
  type EntryContext,
  type EntryReading,
  isOdd,
  parseEntry,
  sourceOf,
  withChoice,
} from "#entry";
import { type Draft, type LeftDraft, useDraft, useLogbook, useWrite } from "#live";
import { type DraftedLine, type Line, lineWords, type TypedOver } from "./draftedLine.ts";
import { isSeparate } from "./isSeparate.ts";
import { pressKey } from "./padText.ts";

const nothing: DraftedLine = { text: "", lines: [] };

/**
 * What stands under the field besides the reading: a second Enter asked for, a line that could not be read, or one of
 * which the driver has to say where it belongs.
 */
export type Standing =
  | { readonly kind: "typing" | "refused" | "homeless" }
  | { readonly kind: "asking"; readonly asks: readonly Ask[] };

export interface Entry {
  readonly text: string;
  /** `isAnew`: the text before was written over. Where it had been refused or asked about, it stays in view. */
  readonly setText: (text: string, isAnew?: boolean) => void;
  /** A digit at the end of the line, or the first of a new one where the line was refused or asked about. */
  readonly typeDigit: (digit: string) => void;
  /** Takes one of the readings that an unclear line may have; a line that was refused is added with it. */
  readonly choose: (choice: string, at: number) => void;
  /** What the text will become; undefined while the field is empty. */
  readonly reading: EntryReading | undefined;
  readonly standing: Standing;
  /** Lines that could not be stored yet. */
  readonly unstored: readonly Line[];
  /** How many lines are on their way, for numbering the next lap. */
  readonly onTheWay: number;
  readonly storeAgain: (line: Line) => void;
  /** Puts a line that was not stored back into the field; absent while something else stands there. */
  readonly takeBack: ((line: Line) => void) | undefined;
  /** Enter or Add, at the event's own time stamp: a page that was busy says nothing about when a key was pressed. */
  readonly submit: (at: number) => void;
  /** Empties the field; what stood there can be brought back. */
  readonly empty: () => void;
  /** Brings back what was emptied or typed over; absent while the field is not empty, or where there is nothing to. */
  readonly bringBack: (() => void) | undefined;
  /** Escape: brings back what is being typed over; else empties the field; else brings back what stood there. */
  readonly escape: (() => void) | undefined;
  readonly typedOver: readonly TypedOver[];
  readonly takeBackTypedOver: (line: TypedOver) => void;
  readonly letGoTypedOver: (line: TypedOver) => void;
  /** The run the line was begun in; undefined in what an older version of the app kept. */
  readonly begunIn: Id | undefined;
  /** The line was begun in another run, and the driver has not said yet where it belongs. */
  readonly isStray: boolean;
  /** Says where a stray line belongs, and adds it there. `at` is the time stamp of the press. */
  readonly placeIn: (runId: Id, at: number) => void;
  /** The draft itself, with what tabs that are gone left half typed in this session. */
  readonly kept: Draft<DraftedLine>;
  /** Puts what was left half typed into the field, which is empty. */
  readonly takeUp: (left: LeftDraft<DraftedLine>) => void;
  readonly pasted: string | undefined;
  /** The run they were pasted in, where that is not the one being driven. */
  readonly pastedElsewhere: Id | undefined;
  readonly setPasted: (text: string | undefined) => void;
  /** The pasted lines are in the book as these laps. */
  readonly takePasted: (laps: readonly Id[]) => void;
  /** The laps stored last from here since the page was opened: one that was typed, or all of a pasted block. */
  readonly stored: readonly Id[];
  /** All laps typed here one by one and stored as Enter was pressed, since the page was opened. */
  readonly driven: readonly Id[];
}

const sameTapMs = 1000;

/**
 * The entry line of a session: its text, kept at every key; what it reads as; and the way into the book. The field
 * is empty again at once, and a line is forgotten only when its transaction is complete.
 * @param run the run being driven
 * @param isLeft that run was ended here a moment ago: what is typed now is for the next one
 */
export function useEntry(sessionId: Id, run: Run | undefined, context: EntryContext, isLeft = false): Entry {
  const { book } = useLogbook();
  const write = useWrite();
  const draft = useDraft<DraftedLine>(`entry ${sessionId}`, nothing, lineWords);
  const [standing, setStanding] = useState<Standing>({ kind: "typing" });
  const [stored, setStored] = useState<readonly Id[]>([]);
  const [driven, setDriven] = useState<readonly Id[]>([]);
  const now = useRef(draft.value);
  now.current = draft.value;
  const lastAdded = useRef<{ text: string; at: number }>(undefined);
  const askedAt = useRef(0);

  const { text, lines } = draft.value;
  const reading = useMemo(
    () => (text.trim() === "" ? undefined : parseEntry(text, context)),
    [text, context],
  );

  const keep = (patch: Partial<DraftedLine>) => {
    now.current = { ...now.current, ...patch };
    const { text: line, lines: onTheWay, pasted, emptied, typedOver = [] } = now.current;
    const isEmpty = line === "" && onTheWay.length === 0 && typedOver.length === 0;
    draft.set(isEmpty && pasted === undefined && emptied === undefined ? undefined : now.current);
  };
  const settle = (id: Id, fault?: string) =>
    keep({
      lines: now.current.lines.flatMap((line) =>
        line.id !== id ? [line] : fault === undefined ? [] : [{ ...line, fault }],
      ),
    });

  const store = async (line: Line) => {
    const { runId, id, lap } = line;
    const change = await write((to) => addLap(to, { runId, id, lap }), {
      onFault: (fault) => settle(id, fault.message),
    });
    if (change === undefined) return false;
    settle(id);
    setStored([id]);
    return true;
  };
  /** A line that had to wait says nothing of when its lap was driven. */
  const storeAsDriven = async (line: Line) => {
    if (await store(line)) setDriven((before) => [...before, line.id]);
  };
  const takeBack = (line: Line) => {
    settle(line.id);
    lastAdded.current = undefined;
    keep({ text: line.text, begunIn: line.runId, into: undefined, isOver: false });
  };

  // Lines that an earlier page did not see arrive: their id is in the book, or they are stored now.
  const { isRead } = draft;
  useEffect(() => {
    if (isRead) for (const line of now.current.lines) void store(line);
  }, [isRead]);
  // Enter was pressed for the lines of a tab that is gone, so they are stored; what was half typed there is offered.
  useEffect(() => {
    for (const one of draft.left) {
      const { lines: theirs, ...half } = one.state;
      if (theirs.length === 0) continue;
      const isKnown = ({ id }: Line) => now.current.lines.some((line) => line.id === id);
      keep({ lines: [...now.current.lines, ...theirs.filter((line) => !isKnown(line))] });
      draft.settleLeft(one, one.text === "" ? undefined : { ...half, lines: [] });
      for (const line of theirs) void store(line);
    }
  }, [draft.left]);
  const takeUp = (one: LeftDraft<DraftedLine>) => {
    const { text: line, begunIn, into, pasted, pastedIn, typedOver = [], isOver } = one.state;
    setStanding({ kind: "typing" });
    keep({
      text: line,
      begunIn,
      into,
      typedOver: [...(now.current.typedOver ?? []), ...typedOver],
      isOver,
      ...(pasted !== undefined && { pasted, pastedIn }),
    });
    draft.settleLeft(one);
  };

  const { begunIn, into } = draft.value;
  const isStray = text.trim() !== "" && begunIn !== undefined && begunIn !== run?.id && into === undefined;
  const submitTo = (runId: Id | undefined, at: number, text: string, reading: EntryReading | undefined) => {
    if (runId === undefined || reading === undefined) return;
    if (!reading.ok) return setStanding({ kind: "refused" });
    const isAgain = lastAdded.current?.text === text && at - lastAdded.current.at < sameTapMs;
    if ((reading.asks.length > 0 || isAgain) && standing.kind !== "asking") {
      askedAt.current = at;
      return setStanding({ kind: "asking", asks: reading.asks });
    }
    if (standing.kind === "asking" && !isSeparate(at, askedAt.current)) return;
    const lap: NewLap = {
      ...reading.lap,
      source: sourceOf(reading),
      ...(isOdd(reading) && { isOdd: true }),
    };
    const line: Line = { id: book.newId(), runId, text, lap };
    lastAdded.current = { text, at };
    setStanding({ kind: "typing" });
    keep({
      text: "",
      begunIn: undefined,
      into: undefined,
      lines: [...now.current.lines, line],
      emptied: undefined,
      isOver: false,
    });
    void storeAsDriven(line);
  };
  const submit = (at: number) =>
    isStray ? setStanding({ kind: "homeless" }) : submitTo(into ?? run?.id, at, text, reading);
  const choose = (choice: string, at: number) => {
    if (reading === undefined || reading.ok) return;
    const chosen = withChoice(text, reading.problem, choice);
    keep({ text: chosen });
    if (standing.kind === "refused" && !isStray)
      submitTo(into ?? run?.id, at, chosen, parseEntry(chosen, context));
    else setStanding({ kind: "typing" });
  };

  const { emptied, typedOver = [], isOver = false } = draft.value;
  const isHeld = standing.kind === "refused" || standing.kind === "asking";
  const setText = (next: string, isAnew = false) => {
    setStanding({ kind: "typing" });
    const { text: before, begunIn: since } = now.current;
    const isTypedOver = isAnew && isHeld && before.trim() !== "";
    const isBegun = isTypedOver || before.trim() === "" || next.trim() === "";
    keep({
      text: next,
      ...(isBegun && { begunIn: isLeft ? undefined : run?.id, into: undefined, isOver: isTypedOver }),
      ...(isTypedOver && { typedOver: [...typedOver, { text: before, begunIn: since }] }),
    });
  };
  const without = (line: TypedOver) => typedOver.filter((other) => other !== line);
  const empty = () => {
    setStanding({ kind: "typing" });
    keep({ text: "", emptied: now.current.text, isOver: false });
  };
  /** What stands in the field meanwhile is taken out of it as by Escape. */
  const takeBackTypedOver = (line: TypedOver) => {
    setStanding({ kind: "typing" });
    const rest = { typedOver: without(line), isOver: false };
    keep({ ...line, into: undefined, ...rest, ...(text !== "" && { emptied: text }) });
  };
  const last = typedOver.at(-1);
  const bringBack =
    text !== ""
      ? undefined
      : emptied !== undefined
        ? () => keep({ text: emptied, emptied: undefined })
        : last && (() => takeBackTypedOver(last));
  return {
    text,
    empty,
    bringBack,
    escape: text === "" ? bringBack : isOver && last ? () => takeBackTypedOver(last) : empty,
    typedOver,
    takeBackTypedOver,
    letGoTypedOver: (line) => keep({ typedOver: without(line) }),
    setText,
    typeDigit: (digit) => setText(isHeld ? digit : pressKey(text, digit), isHeld),
    choose,
    reading,
    standing,
    unstored: lines.filter((line) => line.fault !== undefined),
    onTheWay: lines.filter((line) => line.runId === run?.id).length,
    storeAgain: (line) => void store(line),
    takeBack: text === "" ? takeBack : undefined,
    submit,
    stored,
    driven,
    begunIn,
    isStray,
    placeIn: (runId, at) => {
      keep({ into: runId });
      submitTo(runId, at, text, reading);
    },
    kept: draft,
    takeUp,
    pasted: draft.value.pasted,
    pastedElsewhere: draft.value.pastedIn === run?.id ? undefined : draft.value.pastedIn,
    setPasted: (pasted) => keep({ pasted, pastedIn: pasted === undefined ? undefined : run?.id }),
    takePasted: (laps) => {
      keep({ pasted: undefined, pastedIn: undefined });
      setStored(laps);
    },
  };
}
