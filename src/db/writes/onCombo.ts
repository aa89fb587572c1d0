import type { Id, Run } from "#domain";
import type { Patch } from "../patch.ts";

/** What changes in a run that goes to a combo: to another one, and it leaves its rig test, which is driven on one only. */
export function onCombo(from: Id, comboId: Id): Patch<Pick<Run, "comboId" | "rigTest">> {
  return from === comboId ? { comboId } : { comboId, rigTest: undefined };
}
