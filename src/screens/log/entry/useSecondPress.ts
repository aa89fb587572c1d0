import { useRef, useState } from "react";
import { isSeparate } from "./isSeparate.ts";

/** A question that a second, separate press answers with yes. */
export interface SecondPress {
  /** What is asked; undefined while nothing is. */
  readonly question: string | undefined;
  /** Whether to go on: there is nothing to ask, or it was asked, and this press came apart from the one before. */
  readonly isGivenBy: (at: number, question: string | undefined) => boolean;
  /** Something else stands there now: the answer would be to another question. */
  readonly forget: () => void;
}

/** Asks before something odd is stored. `at` is the time stamp of the event that wants to store it. */
export function useSecondPress(): SecondPress {
  const [question, setQuestion] = useState<string>();
  const askedAt = useRef(0);
  return {
    question,
    isGivenBy: (at, wanted) => {
      if (wanted === undefined) return true;
      if (question === wanted) return isSeparate(at, askedAt.current);
      askedAt.current = at;
      setQuestion(wanted);
      return false;
    },
    forget: () => setQuestion(undefined),
  };
}
