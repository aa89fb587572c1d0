import { ashHatchEvenings } from "./ashHatchEvenings.ts";
import { ashSingleEvenings } from "./ashSingleEvenings.ts";
import type { ComboKey } from "./combos.ts";
import type { Evening, EveningOfCombo } from "./evening.ts";
import { fenHatchEvenings } from "./fenHatchEvenings.ts";
import { fenTrainerEvenings } from "./fenTrainerEvenings.ts";

const withCombo = (combo: ComboKey, evenings: readonly EveningOfCombo[]) =>
  evenings.map((evening): Evening => ({ combo, ...evening }));

/** Every evening of the season, in order. */
export const evenings: readonly Evening[] = [
  ...withCombo("fenHatch", fenHatchEvenings),
  ...withCombo("ashSingle", ashSingleEvenings),
  ...withCombo("fenTrainer", fenTrainerEvenings),
  ...withCombo("ashHatch", ashHatchEvenings),
].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.clock < b.clock ? -1 : 1));
