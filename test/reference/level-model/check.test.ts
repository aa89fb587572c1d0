import { describe, expect, test } from "vitest";
import { levelChange } from "#stats";
import { kinds } from "../../../src/stats/level/levelCells.ts";
import { levelPosterior } from "../../../src/stats/level/levelPosterior.ts";
import data from "./level-model.json";

/** That program knows no chance to stop that grows with the history and spaces the phases evenly. */
const settings = {
  ...data.settings,
  stopping: 0,
  crowding: 1,
  trends: data.settings.trends.map(
    ([mean = 0, deviation = 0, weight = 0]) => [mean, deviation, weight] as const,
  ),
};

const ofChance = 0.001;
const ofMs = 1;

describe.each(["improving", "level", "slower", "stopped", "few"] as const)("the level of %s", (name) => {
  const { medianMs, lapsBefore, laps, sinceFirst, sinceMiddle } = data.data[name];
  const sessions = medianMs.map((ms, i) => ({
    medianMs: ms,
    lapsBefore: lapsBefore[i] ?? 0,
    laps: laps[i] ?? 0,
  }));

  test.each([
    { since: 0, expected: sinceFirst },
    { since: sinceMiddle.session, expected: sinceMiddle },
  ])("its change since session $since", ({ since, expected }) => {
    const found = levelChange({ sessions, since, confidence: 0.9, settings });
    if (!found.known) throw new Error("no change of level");
    const { change, low, high, chanceFaster } = found.value;
    expect(Math.abs(change - expected.median)).toBeLessThanOrEqual(ofMs);
    expect(Math.abs(low - expected.low)).toBeLessThanOrEqual(ofMs);
    expect(Math.abs(high - expected.high)).toBeLessThanOrEqual(ofMs);
    expect(Math.abs(chanceFaster - expected.chanceFaster)).toBeLessThanOrEqual(ofChance);
  });

  test("the weight of the kinds that no longer move", () => {
    const posterior = levelPosterior({ sessions, settings });
    const still = posterior.weights.reduce(
      (sum, weight, cell) =>
        sum + (posterior.kinds[cell] === kinds.still || posterior.kinds[cell] === kinds.stopped ? weight : 0),
      0,
    );
    expect(Math.abs(still - sinceFirst.weightStill)).toBeLessThanOrEqual(ofChance);
  });
});
