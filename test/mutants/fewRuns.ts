import fc from "fast-check";
import { inject } from "vitest";

/** A mutant that needs a worker of its own has every test run for it, so its properties are tried fewer times still. */
const most = inject("mutants").mode === "once" ? 5 : Number.POSITIVE_INFINITY;
const runs = Math.min(Number(process.env["LAP_LEDGER_MUTANTS_RUNS"]), most);

/** As the property asks, but in few runs, always the same ones, and without looking for the smallest failure. */
function fewer<T>(parameters: fc.Parameters<T> = {}): fc.Parameters<T> {
  return {
    seed: 1,
    ...parameters,
    numRuns: Math.min(parameters.numRuns ?? runs, runs),
    endOnFailure: true,
  };
}

export function assert<T>(property: fc.IRawProperty<T>, parameters?: fc.Parameters<T>): Promise<void> | void {
  return fc.assert(property, fewer(parameters));
}

export * from "fast-check";
export default { ...fc, assert };
