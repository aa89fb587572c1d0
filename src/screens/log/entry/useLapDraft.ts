import type { Id } from "#domain";
import { type Draft, useDraft } from "#live";

/** A half-typed edit of a lap, and where the lap was: should it vanish meanwhile, the text still has a place. */
export interface DraftedEdit {
  readonly text: string;
  readonly sessionId: Id;
  readonly runId: Id;
  /** "Lap 4" of its run. */
  readonly number: number;
}

/** An older version of the app kept the text alone. */
type Kept = DraftedEdit | string | null;

interface LapDraft {
  readonly text: string;
  /** Undefined forgets it. */
  readonly set: (text: string | undefined) => void;
  readonly kept: Draft<Kept>;
}

/**
 * The half-typed edit of one lap.
 * @param before the text while nothing is typed
 */
export function useLapDraft(lapId: Id, place: Omit<DraftedEdit, "text">, before: string): LapDraft {
  const kept = useDraft<Kept>(`lap ${lapId}`, null, textOf);
  return {
    text: kept.isEmpty ? before : textOf(kept.value),
    set: (text) => kept.set(text === undefined ? undefined : { ...place, text }),
    kept,
  };
}

const textOf = (kept: Kept) => (typeof kept === "object" ? (kept?.text ?? "") : kept);

/** What is kept of an edit, as far as it is known. */
export function editFrom(state: unknown): Partial<DraftedEdit> & Pick<DraftedEdit, "text"> {
  if (typeof state === "string") return { text: state };
  return (state ?? { text: "" }) as DraftedEdit;
}
