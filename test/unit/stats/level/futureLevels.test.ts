import { describe, expect, test } from "vitest";
import { futureLevels } from "../../../../src/stats/level/futureLevels.ts";
import { levelPosterior } from "../../../../src/stats/level/levelPosterior.ts";
import { levelSettings } from "../../../../src/stats/level/levelSettings.ts";
import { bandOf } from "../../../../src/stats/weeks/bands.ts";
import type { SessionEvent } from "../../../../src/stats/weeks/sessionEvents.ts";
import { falling, flat, sessionsOf } from "../../../support/levelSessions.ts";

const planned = (count: number) => Array.from({ length: count }, () => ({ laps: 20 }));
const after = (medians: readonly number[], events: readonly SessionEvent[] = [], ahead = 8) =>
  futureLevels(levelPosterior({ sessions: sessionsOf(medians), events }), planned(ahead), 3);
const bands = (events: readonly SessionEvent[]) => after(flat(20), events).medians.map(bandOf);
const width = (band: { low: number; high: number } | undefined) => (band?.high ?? 0) - (band?.low ?? 0);

describe("what is to come", () => {
  const usual = bands([]);
  const afterBreak = bands([{ kind: "break", afterSession: 20 }]);
  const afterStep = bands([{ kind: "step", afterSession: 20 }]);

  test("the first session after a break costs about 0.35 % and is less sure; six sessions later all is as before", () => {
    const cost = 0.005 * 2 ** (-10 / 20) * 90_000;
    expect((afterBreak[0]?.mid ?? 0) - (usual[0]?.mid ?? 0)).toBeGreaterThan(0.7 * cost);
    expect((afterBreak[0]?.mid ?? 0) - (usual[0]?.mid ?? 0)).toBeLessThan(1.3 * cost);
    expect(width(afterBreak[0])).toBeGreaterThan(1.15 * width(usual[0]));
    expect(Math.abs((afterBreak[6]?.mid ?? 0) - (usual[6]?.mid ?? 0))).toBeLessThan(0.1 * cost);
    expect(width(afterBreak[6])).toBeLessThan(1.1 * width(usual[6]));
  });

  test("a change just before the coming session makes all of them unsure, four spreads either way, for good", () => {
    for (const k of [0, 7]) {
      expect(width(afterStep[k])).toBeGreaterThan(2.5 * width(usual[k]));
      expect(width(afterStep[k])).toBeLessThan(5 * width(usual[k]));
    }
  });

  test("sessions added at the end change none of those before, so a later date never lowers a chance", () => {
    for (const events of [[], [{ kind: "break", afterSession: 12 }] as const]) {
      const few = after(falling(12), events, 3).medians;
      const many = after(falling(12), events, 9).medians;
      expect(many.slice(0, 3)).toEqual(few);
    }
  });

  test("a driver who moves stops sooner where stopping is likelier", () => {
    const gain = (stopping: number) => {
      const posterior = levelPosterior({
        sessions: sessionsOf(flat(10).map((ms, i) => ms - 300 * i)),
        settings: { ...levelSettings, stopping },
      });
      const { levels } = futureLevels(posterior, planned(20), 3);
      return bandOf(levels[0] ?? []).mid - bandOf(levels[19] ?? []).mid;
    };
    expect(gain(0.2)).toBeLessThan(0.6 * gain(0.001));
  });
});
