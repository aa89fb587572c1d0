import { type Draft, useDraft, useLogbook } from "#live";
import type { RigTexts } from "./rigTexts.ts";

interface Drafted {
  /** Id the row will have, made when the form was opened: storing twice makes no second record. */
  readonly id: string;
  readonly texts: RigTexts;
}

export interface RigDraft {
  /** Undefined while the form is not open. */
  readonly open: Drafted | undefined;
  readonly isRead: boolean;
  /** The draft itself, with what tabs that are gone left of the same form. */
  readonly kept: Draft<Drafted | null>;
  readonly begin: (texts: RigTexts) => void;
  readonly change: (key: string, text: string) => void;
  readonly forget: () => void;
}

/** An open form of a record; it outlives a reload, and is closed only by storing or by cancelling. */
export function useRigDraft(of: string): RigDraft {
  const { book } = useLogbook();
  const draft = useDraft<Drafted | null>(`rig ${of}`, null);
  const open = draft.value ?? undefined;
  return {
    open,
    isRead: draft.isRead,
    kept: draft,
    begin: (texts) => draft.set({ id: book.newId(), texts }),
    change: (key, text) => open && draft.set({ ...open, texts: { ...open.texts, [key]: text } }),
    forget: () => draft.set(undefined),
  };
}
