import { useEffect, useMemo, useRef, useState } from "react";
import { addLap, type NewLap } from "#db";
import type { Id, Run } from "#domain";
import { type EntryContext, type EntryReading, isOdd, parseEntry, sourceOf } from "#entry";
import { useDraft, useLogbook, useWrite } from "#live";
import { isSeparate } from "./isSeparate.ts";

/** A line on its way into the book, or one that did not get there. What it was read as is what is stored. */
export interface Line {
  readonly id: Id;
  readonly runId: Id;
  readonly text: string;
  readonly lap: NewLap;
  readonly fault?: string;
}

interface Drafted {
  readonly text: string;
  readonly lines: readonly Line[];
  /** Several lines pasted and not yet taken. */
  readonly pasted?: string | undefined;
  /** What Escape took out of the field, until it is brought back or a lap is added. */
  readonly emptied?: string | undefined;
}
const nothing: Drafted = { text: "", lines: [] };

/** What stands under the field besides the reading: a second Enter asked for, or a line that could not be read. */
export type Standing =
  | { readonly kind: "typing" | "refused" }
  | { readonly kind: "asking"; readonly why: string };

export interface Entry {
  readonly text: string;
  readonly setText: (text: string) => void;
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
  /** Brings back what was emptied; absent while the field is not empty, or when there is nothing to bring back. */
  readonly bringBack: (() => void) | undefined;
  readonly pasted: string | undefined;
  readonly setPasted: (text: string | undefined) => void;
  /** The pasted lines are in the book as these laps. */
  readonly takePasted: (laps: readonly Id[]) => void;
  /** The laps stored last from here since the page was opened: one that was typed, or all of a pasted block. */
  readonly stored: readonly Id[];
}

const sameTapMs = 1000;

/**
 * The entry line of a session: its text, kept at every key; what it reads as; and the way into the book. The field
 * is empty again at once, and a line is forgotten only when its transaction is complete.
 */
export function useEntry(sessionId: Id, run: Run | undefined, context: EntryContext): Entry {
  const { book } = useLogbook();
  const write = useWrite();
  const draft = useDraft<Drafted>(`entry ${sessionId}`, nothing);
  const [standing, setStanding] = useState<Standing>({ kind: "typing" });
  const [stored, setStored] = useState<readonly Id[]>([]);
  const now = useRef(draft.value);
  now.current = draft.value;
  const lastAdded = useRef<{ text: string; at: number }>(undefined);
  const askedAt = useRef(0);

  const { text, lines } = draft.value;
  const reading = useMemo(
    () => (text.trim() === "" ? undefined : parseEntry(text, context)),
    [text, context],
  );

  const keep = (patch: Partial<Drafted>) => {
    now.current = { ...now.current, ...patch };
    const { text: line, lines: onTheWay, pasted, emptied } = now.current;
    const isNothing = line === "" && onTheWay.length === 0 && pasted === undefined && emptied === undefined;
    draft.set(isNothing ? undefined : now.current);
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
    if (change === undefined) return;
    settle(id);
    setStored([id]);
  };
  const takeBack = (line: Line) => {
    settle(line.id);
    lastAdded.current = undefined;
    keep({ text: line.text });
  };

  // Lines that an earlier page did not see arrive: their id is in the book, or they are stored now.
  const { isRead } = draft;
  useEffect(() => {
    if (isRead) for (const line of now.current.lines) void store(line);
  }, [isRead]);

  const submit = (at: number) => {
    if (run === undefined || reading === undefined) return;
    if (!reading.ok) return setStanding({ kind: "refused" });
    const isAgain = lastAdded.current?.text === text && at - lastAdded.current.at < sameTapMs;
    const why = reading.asks[0]?.sentence ?? (isAgain ? "The same lap again?" : undefined);
    if (why !== undefined && standing.kind !== "asking") {
      askedAt.current = at;
      return setStanding({ kind: "asking", why });
    }
    if (standing.kind === "asking" && !isSeparate(at, askedAt.current)) return;
    const lap: NewLap = {
      ...reading.lap,
      source: sourceOf(reading, context.displayDecimals),
      ...(isOdd(reading) && { isOdd: true }),
    };
    const line: Line = { id: book.newId(), runId: run.id, text, lap };
    lastAdded.current = { text, at };
    setStanding({ kind: "typing" });
    keep({ text: "", lines: [...now.current.lines, line], emptied: undefined });
    void store(line);
  };

  const { emptied } = draft.value;
  return {
    text,
    empty: () => {
      setStanding({ kind: "typing" });
      keep({ text: "", emptied: now.current.text });
    },
    bringBack:
      text === "" && emptied !== undefined ? () => keep({ text: emptied, emptied: undefined }) : undefined,
    setText: (next) => {
      setStanding({ kind: "typing" });
      keep({ text: next });
    },
    reading,
    standing,
    unstored: lines.filter((line) => line.fault !== undefined),
    onTheWay: lines.length,
    storeAgain: (line) => void store(line),
    takeBack: text === "" ? takeBack : undefined,
    submit,
    stored,
    pasted: draft.value.pasted,
    setPasted: (pasted) => keep({ pasted }),
    takePasted: (laps) => {
      keep({ pasted: undefined });
      setStored(laps);
    },
  };
}
