import type { Effort, Run, Surface } from "#domain";

/** What a run was driven with. */
export interface RunFacts {
  readonly effort: Effort;
  readonly surface: Surface;
  /** In the driver's words; absent where nothing was noted. */
  readonly tyres: string | undefined;
  readonly setup: string | undefined;
}

/** The facts of one run. Words of spaces only count as nothing noted. */
export function runFacts({ effort, surface, tyres, setup }: Run): RunFacts {
  return { effort, surface, tyres: noted(tyres), setup: noted(setup) };
}

function noted(words: string | undefined): string | undefined {
  const text = words?.trim();
  return text === "" ? undefined : text;
}
