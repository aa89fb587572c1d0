import { pace, pair, warmUp } from "./drives.ts";
import type { EveningOfCombo } from "./evening.ts";

/** Tessemoor in the club hatch: the gain test, and then a change of physics. */
export const moorHatchEvenings: readonly EveningOfCombo[] = [
  {
    date: "2026-09-11",
    clock: "20:40",
    focus: "free",
    note: "The wheel goes dead in 4: the force is cut off there. Test a lower gain.",
    drives: [warmUp(3, { tyres: "medium", setup: "base", fuelLitres: 15 }), pace(8)],
  },
  { date: "2026-09-17", clock: "20:00", focus: "rig", note: "Pairs 1 and 2.", drives: [...pair, ...pair] },
  { date: "2026-09-22", clock: "20:00", focus: "rig", note: "Pairs 3 and 4.", drives: [...pair, ...pair] },
  { date: "2026-09-27", clock: "17:00", focus: "rig", note: "Pairs 5 and 6.", drives: [...pair, ...pair] },
  {
    date: "2026-09-29",
    clock: "20:00",
    focus: "rig",
    note: "Pairs 7 and 8. The lower gain stays.",
    drives: [...pair, ...pair],
  },
  {
    date: "2026-10-28",
    clock: "20:30",
    focus: "free",
    note: "New tyre physics: a second slower everywhere, so a new page.",
    drives: [warmUp(3), pace(8), pace(7)],
  },
  {
    date: "2026-11-04",
    clock: "20:30",
    focus: "traction",
    note: "Less throttle at the exit of 7 than before.",
    drives: [pace(8), pace(8)],
  },
  { date: "2026-11-18", clock: "21:10", focus: "free", note: "", drives: [pace(7), pace(7)] },
];
