import { useState } from "react";
import type { Id } from "#domain";
import { type Draft, useDraft } from "#live";
import { isTouched, type TypedLine } from "./typedLine.ts";

/** The form of one run of the plan, open or not. */
export interface LineEditing {
  /** What is typed; null while no form is open. */
  readonly typed: TypedLine | null;
  readonly kept: Draft<TypedLine | null>;
  /** It was opened by hand just now, not found half typed from before. */
  readonly isFresh: boolean;
  /** Another one was to be opened while something was typed here. */
  readonly isInTheWay: boolean;
  readonly set: (typed: TypedLine | undefined) => void;
  readonly open: (start: TypedLine) => void;
}

/** One form at a time; what is typed outlives a reload, and is never written over by opening another run. */
export function useLineForm(comboId: Id): LineEditing {
  const kept = useDraft<TypedLine | null>(`plan run ${comboId}`, null, (typed) => typed?.purpose ?? "");
  const [isFresh, setFresh] = useState(false);
  const [isInTheWay, setInTheWay] = useState(false);
  const typed = kept.value;
  return {
    typed,
    kept,
    isFresh,
    isInTheWay: isInTheWay && typed !== null,
    set: (next) => {
      setInTheWay(false);
      kept.set(next);
    },
    open: (start) => {
      const isKept = typed !== null && isTouched(typed);
      setInTheWay(isKept);
      setFresh(true);
      if (!isKept) kept.set(start);
    },
  };
}
