/** What a finding or an advice rests on, in plain words. */
export type Evidence = "measured on you" | "fair evidence" | "worth a try" | "common practice, no source";

/** What the reason of a suggestion and the advice itself rest on. */
export interface Rests {
  readonly reason: Evidence;
  readonly advice: Evidence;
}

/**
 * Both in one line.
 * @example "The reason: measured on you. The advice: common practice, no source."
 */
export function sayEvidence({ reason, advice }: Rests): string {
  return `The reason: ${reason}. The advice: ${advice}.`;
}
