import { brakings, type ReviewedCorner, throttles } from "#domain";

/** What a word of the line of a replay says, beside the gaps. */
export type SeenWord = Pick<ReviewedCorner, "braking" | "throttle" | "isOffLine">;

/** One thing that may be said, the letters it is typed with, and the words that say the same. */
export interface SeenSign {
  readonly letters: string;
  readonly words: string;
  readonly says: SeenWord;
}

/** All that may be said of a corner in letters: the pedal, then the first letter of the judgement. None is a gap's sign. */
export const seenSigns: readonly SeenSign[] = [
  ...brakings.map((braking) => ({
    letters: `b${braking.charAt(0)}`,
    words: `braking ${braking}`,
    says: { braking },
  })),
  ...throttles.map((throttle) => ({
    letters: `t${throttle.charAt(0)}`,
    words: `throttle ${throttle}`,
    says: { throttle },
  })),
  { letters: "o", words: "off line", says: { isOffLine: true } },
];

/** The sign that a word, or a word and the one after it, stands for; and how many words it took. */
export function signAt(word: string, next: string | undefined) {
  const two = next === undefined ? undefined : seenSigns.find(({ words }) => words === `${word} ${next}`);
  if (two) return { sign: two, count: 2 };
  const one = seenSigns.find(({ letters }) => letters === word);
  return one && { sign: one, count: 1 };
}
