import { type Run, surfaces } from "#domain";
import { effortWords, sayGuest, sayTestPlace } from "#words";

/** "pace, full effort · dry · someone else driving" */
export function runInWords(
  run: Pick<
    Run,
    "kind" | "effort" | "surface" | "guest" | "tyres" | "setup" | "gridPlace" | "finishPlace" | "rigTest"
  >,
): string {
  const parts = [
    ...(run.rigTest === undefined ? [] : [sayTestPlace(run.rigTest)]),
    kindAndEffort(run),
    run.surface,
  ];
  if (run.kind === "race") parts.push(...places(run));
  if (run.guest !== undefined) parts.push(sayGuest(run.guest));
  if (run.tyres) parts.push(run.tyres);
  if (run.setup) parts.push(run.setup);
  return parts.join(" · ");
}

const kindAndEffort = ({ kind, effort }: Pick<Run, "kind" | "effort">) =>
  kind === "race" ? "race" : `${kind}, ${effortWords[effort]}`;

/**
 * What did not go on from the run before, where something did not.
 * @example "Pace and full effort again after run 2 (drill, learning effort). The other settings stay."
 */
export function sayAgainAtPace(
  run: Pick<Run, "kind" | "effort">,
  before: { readonly run: Pick<Run, "kind" | "effort" | "guest">; readonly number: number } | undefined,
): string | undefined {
  if (before === undefined || run.kind !== "pace" || run.effort !== "full") return undefined;
  const { kind, effort, guest } = before.run;
  if (kind === "pace" && effort === "full" && guest === undefined) return undefined;
  const was = [kindAndEffort(before.run), ...(guest === undefined ? [] : [sayGuest(guest)])].join(", ");
  const you = guest === undefined ? "" : ", and you are driving,";
  return `Pace and full effort again${you} after run ${before.number} (${was}). The other settings stay.`;
}

/** "grid 5", "finish 3": where a race began and ended, as far as it is known. */
function places({ gridPlace, finishPlace }: Pick<Run, "gridPlace" | "finishPlace">): string[] {
  return [
    gridPlace === undefined ? "" : `grid ${gridPlace}`,
    finishPlace === undefined ? "" : `finish ${finishPlace}`,
  ].filter((part) => part !== "");
}

/** An object of words as options of a choice, in the order of its keys. */
export function asOptions<T extends string>(
  words: Readonly<Record<T, string>>,
): { value: T; label: string }[] {
  return (Object.keys(words) as T[]).map((value) => ({ value, label: words[value] }));
}

export const surfaceOptions = surfaces.map((surface) => ({ value: surface, label: surface }));
