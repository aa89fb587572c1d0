import { expect, it } from "vitest";
import { levelSince, raceOutlook } from "#stats";
import { aDigest } from "../period/manySessions.ts";
import { aRun, choices, type Told } from "../someRows.ts";

const ten = (ms: number): Told[] => Array.from({ length: 10 }, (_, lap) => ms + (lap % 2 === 0 ? 30 : -30));

it("is how much faster the level is now, and unknown where no level was known then", () => {
  const page = Array.from({ length: 8 }, (_, n) => aDigest(3 * n, ten(86_000 - 300 * n)));
  const moved = levelSince(page, page);
  const ids = page.map(({ sessionId }) => sessionId);
  expect(moved(ids[7] ?? "")).toBe(0);
  expect(moved(ids[3] ?? "")).toBeLessThan(-500);
  expect(moved("elsewhere")).toBeUndefined();
});

it("moves the laps of a run before a race is drawn from them", () => {
  const ask = (moved?: () => number) =>
    raceOutlook({ comboId: "c", runs: [aRun(1, ten(85_000))], choices, race: { count: 10 }, moved });
  const [plain, faster] = [ask(), ask(() => -500)];
  if (!plain.distance.known || !faster.distance.known) throw new Error("both are known");
  // Ten laps of half a second less.
  expect(plain.distance.value.mid - faster.distance.value.mid).toBeGreaterThan(4900);
  expect(plain.distance.value.mid - faster.distance.value.mid).toBeLessThan(5100);
  expect([plain.basis.isMoved, faster.basis.isMoved]).toEqual([undefined, true]);
});
