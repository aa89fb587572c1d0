import { type Draft, type Typed, useDraft, useLogbook } from "#live";
import type { RigTexts } from "./rigTexts.ts";

interface Drafted {
  /** Id the row will have, made when the form was opened: storing twice makes no second record. */
  readonly id: string;
  readonly texts: RigTexts;
}

interface Open {
  readonly id: string;
  /** It stays open, and its texts with it, until it is forgotten. */
  readonly typed: Typed<RigTexts>;
}

export interface RigDraft {
  /** Undefined while the form is not open. */
  readonly open: Open | undefined;
  readonly isRead: boolean;
  /** The draft itself, with what tabs that are gone left of the same form. */
  readonly kept: Draft<Drafted | null>;
  readonly begin: (texts: RigTexts) => void;
  readonly forget: () => void;
}

/** An open form of a record; it outlives a reload, and is closed only by storing or by cancelling. */
export function useRigDraft(of: string): RigDraft {
  const { book } = useLogbook();
  const draft = useDraft<Drafted | null>(`rig ${of}`, null);
  const { value, set } = draft;
  const forget = () => set(undefined);
  const change = (texts: RigTexts | undefined) => value && texts && set({ ...value, texts });
  return {
    open: value === null ? undefined : { id: value.id, typed: { value: value.texts, set: change } },
    isRead: draft.isRead,
    kept: draft,
    begin: (texts) => set({ id: book.newId(), texts }),
    forget,
  };
}
