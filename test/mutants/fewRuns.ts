import fc from "fast-check";

const runs = Number(process.env["LAP_LEDGER_MUTANTS_RUNS"]);

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
