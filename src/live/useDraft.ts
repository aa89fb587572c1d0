import { useCallback, useEffect, useRef, useState } from "react";
import { faultOf, LedgerFault, readDraft } from "#db";
import { useNotices } from "#state/notices.ts";
import { keepDraft } from "./keepDraft.ts";
import { useLogbook } from "./logbookContext.ts";

export interface Draft<T> {
  readonly value: T;
  /** False until what an earlier page left behind has been read. */
  readonly isRead: boolean;
  /** Undefined forgets the draft. */
  readonly set: (value: T | undefined) => void;
}

/**
 * Something typed and not yet stored, kept at every key press beside the logbook, so that it outlives a reload, a
 * crash and a killed tab. What is typed before the old draft has been read wins over it.
 * @param key what is drafted, within this logbook: "entry 0192…"
 * @param empty the value where nothing is drafted
 */
export function useDraft<T>(key: string, empty: T): Draft<T> {
  const { shelf, book } = useLogbook();
  const whole = `${book.name}/${key}`;
  const [state, setState] = useState<{ key: string; value: T | undefined; isRead: boolean }>();
  const isTouched = useRef(false);

  useEffect(() => {
    let isLeft = false;
    isTouched.current = false;
    const take = (stored: T | undefined) => {
      if (isLeft) return;
      setState((now) =>
        isTouched.current && now?.key === whole
          ? { ...now, isRead: true }
          : { key: whole, value: stored, isRead: true },
      );
    };
    readDraft(shelf, whole).then(
      (stored) => take(stored?.state as T | undefined),
      (error: unknown) => {
        // Another logbook was opened while this was read: nobody waits for it any more.
        if (isLeft) return;
        take(undefined);
        sayOnce(faultOf(error, "Typed text not read"));
      },
    );
    return () => {
      isLeft = true;
    };
  }, [shelf, whole]);

  const set = useCallback(
    (value: T | undefined) => {
      isTouched.current = true;
      setState((now) => ({ key: whole, value, isRead: now?.key === whole && now.isRead }));
      keepDraft(shelf, whole, value).catch(sayOnce);
    },
    [shelf, whole],
  );

  const isMine = state?.key === whole;
  return { value: (isMine ? state.value : undefined) ?? empty, isRead: isMine && state.isRead, set };
}

/** A draft that cannot be kept is said once, not at every key. */
function sayOnce(error: unknown): void {
  if (!(error instanceof LedgerFault)) throw error;
  const { list, say } = useNotices.getState();
  const isSaid = list.some(({ text }) => text === error.message);
  if (!isSaid) say({ kind: "fault", text: error.message, actions: [] });
}
