import { isText } from "./kinds.ts";
import { type Mends, orGone } from "./mendReads.ts";

const isMark = (value: unknown) => isText(value) && value !== "";

/** What tells of changes, or was kept of answers, and cannot be right, is as if it had never been: it is made anew. */
export const derivedMends: Mends = {
  changeMarks: { mark: orGone(isMark) },
  keptAnswers: { mark: orGone(isMark), version: orGone(isMark) },
};
