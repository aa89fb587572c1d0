import { useState } from "react";
import type { SeenPlan } from "#db";
import { canonicalText, type PlannedRun } from "#domain";
import { type DrivenCombo, type NextSession, useLogbook } from "#live";
import { plannedLines } from "#words";

/** The plan as the page shows it: the driver's own, or the draft, which is stored with the first change. */
export interface ShownPlan extends SeenPlan {
  readonly isOwn: boolean;
}

/** The plan to be shown; undefined until it is known. */
export function useShownPlan(combo: DrivenCombo, next: NextSession | undefined): ShownPlan | undefined {
  const drafted = useDraftedLines(combo, next);
  if (next === undefined) return undefined;
  const { own, minutes } = next;
  return { comboId: combo.id, isOwn: own !== undefined, lines: own?.lines ?? drafted, minutes };
}

/** The lines of the draft; each keeps its id while the draft says the same. */
function useDraftedLines(combo: DrivenCombo, next: NextSession | undefined): readonly PlannedRun[] {
  const { surroundings } = useLogbook();
  const [kept, setKept] = useState<{ readonly about: string; readonly lines: readonly PlannedRun[] }>();
  const draft = next?.found?.draft.lines ?? none;
  const { corners } = combo.layout;
  const about = canonicalText({ draft, corners });
  if (kept?.about === about) return kept.lines;
  const lines = plannedLines(draft, corners, surroundings.newId);
  setKept({ about, lines });
  return lines;
}

const none: readonly never[] = [];
