import { pace, warmUp } from "./drives.ts";
import type { EveningOfCombo } from "./evening.ts";

/** Varnholt Ring in the endurance trainer: new, with few laps. */
export const ringTrainerEvenings: readonly EveningOfCombo[] = [
  {
    date: "2026-11-08",
    clock: "17:00",
    focus: "line",
    note: "Everything comes sooner in this car.",
    drives: [warmUp(2, { tyres: "slick", setup: "as delivered" }), pace(6)],
  },
  {
    date: "2026-11-15",
    clock: "17:40",
    focus: "line",
    note: "Brake for 5 at the 100 board.",
    drives: [pace(6), pace(5)],
  },
  { date: "2026-11-22", clock: "16:30", focus: "line", note: "", drives: [warmUp(2), pace(7)] },
];
