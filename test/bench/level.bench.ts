import { bench, describe } from "vitest";
import { forecastTarget, levelChange, levelOutlook } from "#stats";
import { chanceFrom } from "../../demo-data/drivers.ts";
import { drive } from "../calibration/practice.ts";

const future = Array.from({ length: 12 }, () => ({ laps: 22 }));

/** What a page shows of its level, against one filter and one change of level. */
describe.each([8, 40])("the level after %i sessions", (sessions) => {
  const { past } = drive("exponential", { sessions, ahead: 0 }, chanceFrom(99));
  const targetMs = 0.99 * Math.min(...past.map(({ bestMs }) => bestMs));

  bench("one change of level", () => {
    levelChange({ sessions: past, since: 0, confidence: 0.9 });
  });

  bench("all that is said of it", () => {
    levelOutlook({ sessions: past, since: [0], future, seed: 1 });
  });

  bench("forecast of a target, 2,000 draws", () => {
    forecastTarget({ history: past, future, targetMs, kind: "best", seed: 1 });
  });
});
