import { useState } from "react";
import type { Id } from "#domain";
import { type Draft, type Typed, useDraft, useLogbook } from "#live";
import type { RigField } from "./rigFields.ts";
import { type RigTexts, textKey } from "./rigTexts.ts";

interface Drafted {
  /** Id the row will have, made when the first sign was typed: storing twice makes no second record. */
  readonly id: Id;
  /** The texts that were typed, and no others: what is in force shows through the rest, whenever it changes. */
  readonly texts: RigTexts;
}

export interface NewRecordDraft {
  readonly id: Id;
  readonly typed: Typed<RigTexts>;
  readonly isRead: boolean;
  /** Something in it differs from what is in force. */
  readonly isTouched: boolean;
  /** The draft itself, with what tabs that are gone left of the same form. */
  readonly kept: Draft<Drafted | null>;
  readonly forget: () => void;
}

/**
 * A new record while it is typed; it outlives a reload. The form of one value has a draft of its own, so that it stores that
 * value alone.
 * @param field the one value that is asked for; undefined for the form with all fields
 * @param base the texts of what is in force
 */
export function useNewRecord(field: RigField | undefined, base: RigTexts): NewRecordDraft {
  const { book } = useLogbook();
  const [freshId] = useState(() => book.newId());
  const kept = useDraft<Drafted | null>(field === undefined ? "rig new" : `rig new ${textKey(field)}`, null);
  const { value, set } = kept;
  const touched = value?.texts ?? {};
  const id = value?.id ?? freshId;
  return {
    id,
    typed: {
      value: { ...base, ...touched },
      set: (texts) => {
        const differing = Object.entries(texts ?? {}).filter(([key, text]) => text !== (base[key] ?? ""));
        set(differing.length === 0 ? undefined : { id, texts: Object.fromEntries(differing) });
      },
    },
    isRead: kept.isRead,
    isTouched: Object.entries(touched).some(([key, text]) => text !== (base[key] ?? "")),
    kept,
    forget: () => set(undefined),
  };
}
