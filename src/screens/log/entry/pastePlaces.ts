import type { Id, Run } from "#domain";
import type { SessionFigures } from "../session/sessionFigures.ts";

/** A run that pasted laps can go to, in words where there is more than one: "run 2". */
export interface PastePlace {
  readonly runId: Id;
  readonly words: string | undefined;
}

/**
 * Where pasted laps can go: the run being driven; where they were pasted in one that has ended since, that one first.
 * @param pastedIn the run they were pasted in, where that is not the one being driven
 */
export function pastePlaces(
  shown: SessionFigures["shown"],
  current: Run,
  pastedIn: Id | undefined,
): readonly PastePlace[] {
  const place = (id: Id) => {
    const one = shown.find(({ run }) => run.id === id);
    return one === undefined ? [] : [{ runId: id, words: `run ${one.number}` }];
  };
  const before = pastedIn === undefined || pastedIn === current.id ? [] : place(pastedIn);
  return before.length === 0 ? [{ runId: current.id, words: undefined }] : [...before, ...place(current.id)];
}
