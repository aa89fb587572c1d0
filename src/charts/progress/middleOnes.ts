import type { PlacedSession } from "./SessionMarks.tsx";

/**
 * Few enough sessions for a narrow chart: of each so many neighbours the one whose usual lap is the middle one, pages kept
 * apart. None is left out where they are few already.
 * @param placed in order of their place
 */
export function middleOnes<P extends PlacedSession>(placed: readonly P[], most: number): readonly P[] {
  const size = Math.ceil(placed.length / most);
  if (size <= 1) return placed;
  const groups: P[][] = [];
  for (const one of placed) {
    const group = groups.at(-1);
    const isFull = group === undefined || group.length === size;
    if (isFull || group[0]?.session.isPresentPage !== one.session.isPresentPage) groups.push([one]);
    else group.push(one);
  }
  const usualOf = ({ session: { median, best } }: P) => median ?? best ?? 0;
  return groups.map(
    (group) => group.toSorted((a, b) => usualOf(a) - usualOf(b))[(group.length - 1) >> 1] as P,
  );
}
