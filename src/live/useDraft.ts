import { useCallback, useEffect, useRef, useState } from "react";
import { type Draft as DraftRow, faultOf, forgetDraft, writeDraft } from "#db";
import { sayMoment } from "#domain";
import { findDrafts } from "./findDrafts.ts";
import { keepDraft } from "./keepDraft.ts";
import { useLogbook } from "./logbookContext.ts";
import { sayTypedFault } from "./sayTypedFault.ts";
import { typedWords } from "./typedWords.ts";
import { whenSeen } from "./whenSeen.ts";

/** What a tab that is gone left half typed. */
export interface LeftDraft<T> {
  readonly key: string;
  readonly state: T;
  /** What the driver would know it by; empty where nothing of it is worth offering. */
  readonly text: string;
  /** When it was typed last: "Tuesday 24 November, 21:40". Absent in what an older version of the app kept. */
  readonly when: string | undefined;
  readonly row: DraftRow;
}

export interface Draft<T> {
  readonly value: T;
  /** False until what an earlier page left behind has been read. */
  readonly isRead: boolean;
  /** Nothing is typed here: the value is the one that stands where nothing is drafted. */
  readonly isEmpty: boolean;
  /** Undefined forgets the draft. */
  readonly set: (value: T | undefined) => void;
  /** What tabs that are gone left half typed about the same thing, to be offered. */
  readonly left: readonly LeftDraft<T>[];
  /** Makes it the draft of this tab, in place of what is typed here. */
  readonly takeUp: (left: LeftDraft<T>) => void;
  /** Keeps the rest of what was left, or, without one, forgets it. */
  readonly settleLeft: (left: LeftDraft<T>, rest?: T) => void;
}

interface Held<T> {
  readonly about: string;
  readonly value: T | undefined;
  readonly isRead: boolean;
  readonly left: readonly LeftDraft<T>[];
}

/**
 * Something typed and not yet stored, kept at every key press beside the logbook, so that it outlives a reload, a
 * crash and a killed tab. It belongs to the tab it is typed in; what tabs that are gone left is offered. What is typed
 * before the old draft has been read wins over it.
 * @param key what is drafted, within this logbook: "entry 0192…"
 * @param empty the value where nothing is drafted
 * @param words what the driver would know the value by; empty where nothing of it is worth offering
 */
export function useDraft<T>(key: string, empty: T, words: (value: T) => string = typedWords): Draft<T> {
  const { shelf, book, surroundings } = useLogbook();
  const { tab } = surroundings;
  const about = `${book.name}/${key}`;
  const [state, setState] = useState<Held<T>>();
  const isTouched = useRef(false);
  const isKept = useRef(Promise.resolve(true));
  const inWords = useRef(words);
  inWords.current = words;

  useEffect(() => {
    let isOver = false;
    isTouched.current = false;
    const take = (value: T | undefined, left: readonly LeftDraft<T>[]) => {
      if (isOver) return;
      setState((now) =>
        isTouched.current && now?.about === about
          ? { ...now, isRead: true, left }
          : { about, value, isRead: true, left },
      );
    };
    const zone = surroundings.zone();
    const toLeft = (row: DraftRow) => leftOf(row, row.state as T, inWords.current, zone);
    findDrafts(shelf, tab, about, () => !isOver && !isTouched.current).then(
      ({ mine, left }) => take(mine?.state as T | undefined, left.map(toLeft)),
      (error: unknown) => {
        // Another logbook was opened while this was read: nobody waits for it any more.
        if (isOver) return;
        take(undefined, []);
        sayTypedFault(faultOf(error, "Typed text not read"));
      },
    );
    // Another tab may have been closed meanwhile. Where nothing can be read any more, the page says so by itself.
    const end = whenSeen(() => {
      findDrafts(shelf, tab, about, () => false).then(
        ({ left }) =>
          isOver ||
          setState((now) => (now?.isRead && now.about === about ? { ...now, left: left.map(toLeft) } : now)),
        () => undefined,
      );
    });
    return () => {
      isOver = true;
      end();
    };
  }, [shelf, tab, about, surroundings]);

  const set = useCallback(
    (value: T | undefined) => {
      isTouched.current = true;
      setState((now) =>
        now?.about === about ? { ...now, value } : { about, value, isRead: false, left: [] },
      );
      const kept = value === undefined ? undefined : { text: inWords.current(value), state: value };
      const keeping = keepDraft(shelf, tab.id, about, kept);
      keeping.catch(sayTypedFault);
      isKept.current = keeping.then(
        () => true,
        () => false,
      );
    },
    [shelf, tab, about],
  );
  const settleLeft = useCallback(
    (left: LeftDraft<T>, rest?: T) => {
      const kept = rest === undefined ? [] : [leftOf(left.row, rest, inWords.current, surroundings.zone())];
      setState(
        (now) => now && { ...now, left: now.left.flatMap((one) => (one.key === left.key ? kept : [one])) },
      );
      // Only once what was taken over from it is kept here.
      isKept.current
        .then((isSafe) => {
          if (!isSafe) return undefined;
          return kept[0] ? writeDraft(shelf, kept[0].row) : forgetDraft(shelf, left.key);
        })
        .catch(sayTypedFault);
    },
    [shelf, surroundings],
  );
  const takeUp = useCallback(
    (left: LeftDraft<T>) => {
      set(left.state);
      settleLeft(left);
    },
    [set, settleLeft],
  );

  const held = state?.about === about ? state : undefined;
  return {
    value: held?.value ?? empty,
    isRead: held?.isRead ?? false,
    isEmpty: held?.value === undefined,
    set,
    left: held?.left ?? none,
    takeUp,
    settleLeft,
  };
}

const none: readonly never[] = [];

function leftOf<T>(row: DraftRow, state: T, words: (value: T) => string, zone: string): LeftDraft<T> {
  const text = words(state);
  const when = row.at === undefined ? undefined : sayMoment(row.at, zone);
  return { key: row.key, state, text, when, row: { ...row, state, text } };
}
