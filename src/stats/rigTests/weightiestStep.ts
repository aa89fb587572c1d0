import type { RigStep } from "./rigSteps.ts";

/**
 * Of several combos about one change of the rig, the one that can tell most: with the most sessions on its poorer side, among
 * those that can tell at all. Chosen by how much was driven, never by what came out.
 * @returns undefined without combos; of equals the first
 */
export function weightiestStep(steps: readonly RigStep[]): RigStep | undefined {
  let best: RigStep | undefined;
  for (const step of steps) if (best === undefined || weight(step) > weight(best)) best = step;
  return best;
}

function weight({ before, after, step }: RigStep): number {
  const poorer = Math.min(before?.sessions.length ?? 0, after?.sessions.length ?? 0);
  return step.known ? poorer : poorer - 1000;
}
