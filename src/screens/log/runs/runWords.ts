import { type Run, surfaces } from "#domain";
import { sayGuest } from "#words";

/** "pace, full effort · dry · someone else driving" */
export function runInWords(
  run: Pick<Run, "kind" | "effort" | "surface" | "guest" | "tyres" | "setup" | "gridPlace" | "finishPlace">,
): string {
  const parts = [run.kind === "race" ? "race" : `${run.kind}, ${effortWords[run.effort]}`, run.surface];
  if (run.kind === "race") parts.push(...places(run));
  if (run.guest !== undefined) parts.push(sayGuest(run.guest));
  if (run.tyres) parts.push(run.tyres);
  if (run.setup) parts.push(run.setup);
  return parts.join(" · ");
}

/** "grid 5", "finish 3": where a race began and ended, as far as it is known. */
function places({ gridPlace, finishPlace }: Pick<Run, "gridPlace" | "finishPlace">): string[] {
  return [
    gridPlace === undefined ? "" : `grid ${gridPlace}`,
    finishPlace === undefined ? "" : `finish ${finishPlace}`,
  ].filter((part) => part !== "");
}

export const kindWords = { "warm-up": "warm-up", drill: "drill", pace: "pace", race: "race" } as const;
export const effortWords = {
  easy: "easy",
  learning: "learning effort",
  brisk: "brisk",
  full: "full effort",
} as const;

/** An object of words as options of a choice, in the order of its keys. */
export function asOptions<T extends string>(
  words: Readonly<Record<T, string>>,
): { value: T; label: string }[] {
  return (Object.keys(words) as T[]).map((value) => ({ value, label: words[value] }));
}

export const surfaceOptions = surfaces.map((surface) => ({ value: surface, label: surface }));
