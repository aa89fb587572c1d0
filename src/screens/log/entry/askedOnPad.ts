/** A question about what was typed, in words for fingers: on the pad a lap is kept by Add. */
export function askedOnPad(question: string): string {
  return question
    .replace("Enter again if it is right", "Press Add again to keep it")
    .replace("Enter again", "Press Add again");
}
