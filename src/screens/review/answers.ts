import {
  accountTitle,
  answerOfDifferent,
  practiceTitle,
  progressTitle,
  sayBreaks,
  sayLatestRig,
  steadinessTitle,
} from "#words";
import type { Looked } from "./looked.ts";

/** What a folded question answers. */
export const answerFaster = ({ review, on }: Looked) => progressTitle(review, on);

export const answerSteadier = ({ review }: Looked) => steadinessTitle(review);

export const answerTime = ({ review }: Looked) => accountTitle(review);

export const answerDifferent = ({ review, before }: Looked) =>
  answerOfDifferent(review, review.against.known ? before : undefined);

export const answerPractised = ({ review }: Looked) =>
  `${practiceTitle(review.practice)}; ${sayBreaks(review.breaks)}`;

export const answerRig = ({ rig: [latest] }: Looked) => (latest === undefined ? "" : sayLatestRig(latest));
