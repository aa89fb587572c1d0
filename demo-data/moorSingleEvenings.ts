import { pace, warmUp } from "./drives.ts";
import type { EveningOfCombo } from "./evening.ts";

const flatNotes = [
  "Good rhythm, same times as ever.",
  "Corner 4 in second gear, no difference.",
  "Quiet evening.",
  "Tried a later brake point for 7. It cost the exit.",
  "Steady, nothing new.",
  "Before the holiday. Times as usual.",
  "Back in it after one lap.",
  "The new view takes getting used to.",
  "Kerb at 1: more of it, same time.",
  "Nothing gained this month. Review a replay before the next run.",
  "Watched lap 6 from outside: two metres unused at the exit of 4.",
  "Use the road at 4. Plan it as a drill next week.",
] as const;
const flatDates = [
  "2026-09-04",
  "2026-09-09",
  "2026-09-12",
  "2026-09-18",
  "2026-09-25",
  "2026-10-02",
  "2026-10-18",
  "2026-10-25",
  "2026-10-31",
  "2026-11-06",
  "2026-11-13",
  "2026-11-20",
] as const;

/** Tessemoor in the single-seater: known by heart, and going nowhere. */
export const moorSingleEvenings = flatDates.map((date, index): EveningOfCombo => {
  const drives = [
    ...(index % 3 === 0 ? [warmUp(3, { tyres: "hard" })] : []),
    pace(9),
    pace(index % 2 === 0 ? 9 : 7),
  ];
  return {
    date,
    clock: index % 2 === 0 ? "19:15" : "21:20",
    focus: index % 4 === 3 ? "braking" : "free",
    note: flatNotes[index] ?? "",
    ...(index >= 6 ? { hasSectors: true as const } : {}),
    drives,
  };
});
