import type { ComboKey } from "./combos.ts";
import type { Evening, EveningOfCombo } from "./evening.ts";
import { moorHatchEvenings } from "./moorHatchEvenings.ts";
import { moorSingleEvenings } from "./moorSingleEvenings.ts";
import { ringHatchEvenings } from "./ringHatchEvenings.ts";
import { ringTrainerEvenings } from "./ringTrainerEvenings.ts";

const withCombo = (combo: ComboKey, evenings: readonly EveningOfCombo[]) =>
  evenings.map((evening): Evening => ({ combo, ...evening }));

/** Every evening of the season, in order. */
export const evenings: readonly Evening[] = [
  ...withCombo("ringHatch", ringHatchEvenings),
  ...withCombo("moorSingle", moorSingleEvenings),
  ...withCombo("ringTrainer", ringTrainerEvenings),
  ...withCombo("moorHatch", moorHatchEvenings),
].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.clock < b.clock ? -1 : 1));
