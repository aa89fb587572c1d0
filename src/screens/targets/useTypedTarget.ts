import { type Draft, useDraft } from "#live";
import type { TypedTarget } from "./typedTarget.ts";

/** Which form of the page was opened last: only one is shown at a time. */
export interface FrontForm {
  readonly key: string | undefined;
  readonly set: (key: string | undefined) => void;
}

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
 * The form of one target. What is typed outlives a reload: the form is then open again with it. While another one is in
 * front it waits, folded, with what was typed.
 * @param key "target new", or the target it changes
 */
export function useTypedTarget(key: string, front: FrontForm): TargetEditing {
  const draft = useDraft<TypedTarget | null>(key, null);
  const { set: setDraft, value } = draft;
  const isFront = front.key === key;
  return {
    isOpen: isFront || (front.key === undefined && value !== null),
    isFresh: isFront,
    typed: value ?? undefined,
    kept: draft,
    set: (typed) => {
      front.set(key);
      setDraft(typed);
    },
    open: () => front.set(key),
    close: () => {
      front.set(undefined);
      setDraft(undefined);
    },
  };
}
