import { type Effort, type Id, isPartlyWritten, lapsInOrder, type Run, type Surface } from "#domain";

/** What a run was driven with. */
export interface RunFacts {
  readonly effort: Effort;
  readonly surface: Surface;
  /** In the driver's words; absent where nothing was noted. */
  readonly tyres: string | undefined;
  readonly setup: string | undefined;
  /** The rig settings in force; absent where the run names none. */
  readonly rigId: Id | undefined;
  /** Not every lap is written down; absent where all are. A lap's place says so only on a dry track. */
  readonly isPartly?: true | undefined;
  /** Of a rig test: it has a setting of its own, whatever record is in force. Absent in any other. */
  readonly isOfTest?: true | undefined;
}

/** The facts of one run. Words of spaces only count as nothing noted. */
export function runFacts(run: Run): RunFacts {
  const { effort, surface, tyres, setup, rigId } = run;
  const facts: RunFacts = {
    effort,
    surface,
    tyres: noted(tyres),
    setup: noted(setup),
    rigId,
    ...(run.rigTest && { isOfTest: true }),
  };
  return isPartlyWritten(run, lapsInOrder(run).length) ? { ...facts, isPartly: true } : facts;
}

function noted(words: string | undefined): string | undefined {
  const text = words?.trim();
  return text === "" ? undefined : text;
}
