import type { Effort, Id, Run, Surface } from "#domain";

/** What a run was driven with. */
export interface RunFacts {
  readonly effort: Effort;
  readonly surface: Surface;
  /** In the driver's words; absent where nothing was noted. */
  readonly tyres: string | undefined;
  readonly setup: string | undefined;
  /** The rig settings in force; absent where the run names none. */
  readonly rigId: Id | undefined;
}

/** The facts of one run. Words of spaces only count as nothing noted. */
export function runFacts({ effort, surface, tyres, setup, rigId }: Run): RunFacts {
  return { effort, surface, tyres: noted(tyres), setup: noted(setup), rigId };
}

function noted(words: string | undefined): string | undefined {
  const text = words?.trim();
  return text === "" ? undefined : text;
}
