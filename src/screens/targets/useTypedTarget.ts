import { useState } from "react";
import { type Draft, useDraft } from "#live";
import type { TypedTarget } from "./typedTarget.ts";

/** A form that is open, or folded away. */
export interface TargetEditing {
  readonly isOpen: boolean;
  /** It was opened by hand just now, not found half-typed from before. */
  readonly isFresh: boolean;
  /** What was typed; undefined until the first change. */
  readonly typed: TypedTarget | undefined;
  /** The draft itself, with what tabs that are gone left of the same form. */
  readonly kept: Draft<TypedTarget | null>;
  readonly set: (typed: TypedTarget) => void;
  readonly open: () => void;
  /** Closes the form and forgets what was typed. */
  readonly close: () => void;
}

/**
 * The form of one target. What is typed outlives a reload: the form is then open again with it.
 * @param key "target new", or the target it changes
 */
export function useTypedTarget(key: string): TargetEditing {
  const draft = useDraft<TypedTarget | null>(key, null);
  const [isWanted, setWanted] = useState(false);
  const { set: setDraft, value } = draft;
  return {
    isOpen: isWanted || value !== null,
    isFresh: isWanted,
    typed: value ?? undefined,
    kept: draft,
    set: setDraft,
    open: () => setWanted(true),
    close: () => {
      setWanted(false);
      setDraft(undefined);
    },
  };
}
