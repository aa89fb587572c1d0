import type { Plan } from "#domain";
import { instantAt } from "./season.ts";
import type { Stamp } from "./stamps.ts";
import { type LineOfStory, tellLines } from "./tellLines.ts";

const minutes = 50;

const lines: readonly LineOfStory[] = [
  { purpose: "warm up", laps: 3, kind: "warm-up", effort: "easy", check: { figure: "driven" } },
  { purpose: "pace", laps: 8, effort: "full", check: { figure: "clean", value: 7 } },
  {
    purpose: "exits without wheelspin",
    laps: 5,
    kind: "drill",
    effort: "learning",
    drill: "traction",
    check: { figure: "drill", value: 700 },
  },
  { purpose: "race pace", laps: 10, effort: "full", check: { figure: "clean", value: 9 } },
];

/** The evening the driver takes again, whatever the combo. */
export function makeTemplates(stamp: Stamp): Plan[] {
  const at = instantAt("2026-10-28", "21:10");
  return [{ ...stamp(at), name: "Usual evening", minutes, lines: tellLines(lines, () => stamp(at).id) }];
}
