import type { RunKind } from "#domain";

/**
 * Whether laps of a run can be a page's personal best: those of pace and race runs always; those of a warm-up or a drill
 * only where an earlier session has one, because a first PB would else be a lap that nobody drove for its time.
 * @param hasEarlierBest the page has a personal best from before the session
 */
export function mayTakeBest(kind: RunKind, hasEarlierBest: boolean): boolean {
  return kind === "pace" || kind === "race" || hasEarlierBest;
}
