import { describe, expect, test } from "vitest";
import { levelModel } from "../../../../src/stats/level/levelModel.ts";
import { levelsOff } from "../../../../src/stats/level/levelsOff.ts";
import { falling, flat, sessionsOf } from "../../../support/levelSessions.ts";

const end = (medians: readonly number[]) => {
  const model = levelModel({ sessions: sessionsOf(medians) });
  if (!model.known) throw new Error("no model");
  return levelsOff(model.value, 1);
};

describe("where the level ends", () => {
  test("where it is, for times that have come to rest", () => {
    expect(end(flat(30))).toEqual({ kind: "already" });
  });

  test("nowhere in sight, for times that rise", () => {
    expect(end(flat(20).map((ms, i) => ms + 100 * i))).toEqual({ kind: "rising" });
  });

  test("untold while the gain is young, or goes on in a straight line", () => {
    expect(end(falling(4))).toEqual({ kind: "untold" });
    expect(end(flat(20).map((ms, i) => ms - 150 * i))).toEqual({ kind: "untold" });
  });

  test("in tenths, and nearer than half of the gain, where a gain is dying away", () => {
    const found = end(falling(17));
    if (found.kind !== "at") throw new Error(found.kind);
    const { low, mid, high } = found.ms;
    for (const ms of [low, mid, high]) expect(ms % 100).toBe(0);
    expect(low).toBeLessThanOrEqual(mid);
    expect(mid).toBeLessThanOrEqual(high);
    expect(Math.abs(mid - 90_000)).toBeLessThanOrEqual(400);
    expect(high - low).toBeLessThanOrEqual(2000);
  });
});
