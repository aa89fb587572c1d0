import { describe, expect, test } from "vitest";
import { stepAtChange } from "#stats";

const sessionsOf = (medians: readonly number[]) =>
  medians.map((medianMs, i) => ({ lapsBefore: 20 * i, laps: 20, medianMs, bestMs: medianMs - 700 }));
const level = [90_100, 89_900, 90_050, 89_950, 90_000, 90_100];

describe("before and after a change", () => {
  test("a jump of two seconds is found, with its sign, and its interval leaves out 0", () => {
    const step = stepAtChange({
      history: sessionsOf([...level, ...level.map((ms) => ms - 2000)]),
      afterSession: 6,
    });
    if (!step.known) throw new Error(JSON.stringify(step.reason));
    expect(step.value.estimate).toBeLessThan(-1200);
    expect(step.value.high).toBeLessThan(0);
    expect(step.value.low).toBeLessThan(step.value.estimate);
    expect(step.value.isQuestioned).toBe(false);
  });

  test("no jump: the interval holds 0", () => {
    const step = stepAtChange({ history: sessionsOf([...level, ...level]), afterSession: 6 });
    if (!step.known) throw new Error(JSON.stringify(step.reason));
    expect(step.value.low).toBeLessThan(0);
    expect(step.value.high).toBeGreaterThan(0);
  });

  test("more than 3 % of the lap is questioned", () => {
    const history = sessionsOf([...level, ...level.map((ms) => ms - 3500)]);
    expect(stepAtChange({ history, afterSession: 6 })).toMatchObject({
      value: { isQuestioned: true },
    });
  });

  test("two sessions are needed on each side", () => {
    const history = sessionsOf(level);
    expect(stepAtChange({ history, afterSession: 1 })).toEqual({
      known: false,
      reason: {
        needs: 2,
        of: "session",
        each: { needs: 5, of: "pace lap" },
        has: 1,
        where: "before the change",
      },
    });
    expect(stepAtChange({ history, afterSession: 5 })).toEqual({
      known: false,
      reason: {
        needs: 2,
        of: "session",
        each: { needs: 5, of: "pace lap" },
        has: 1,
        where: "after the change",
      },
    });
    expect(stepAtChange({ history: [], afterSession: 0 }).known).toBe(false);
  });

  test("two sessions on a side are enough, and none can lie beyond the last", () => {
    const history = sessionsOf(level.slice(0, 4));
    expect(stepAtChange({ history, afterSession: 2 }).known).toBe(true);
    expect(stepAtChange({ history, afterSession: 9 })).toMatchObject({ reason: { has: 0 } });
  });

  test("a change before the last 250 sessions is too long ago", () => {
    const history = sessionsOf(Array.from({ length: 253 }, (_, i) => 90_000 + (level[i % 6] ?? 0) / 1000));
    expect(stepAtChange({ history, afterSession: 3 })).toEqual({
      known: false,
      reason: { because: "change too long ago" },
    });
    expect(stepAtChange({ history, afterSession: 4 }).known).toBe(true);
  });

  test("a break at the same place takes part of the loss upon itself", () => {
    const history = sessionsOf([...level, ...level.map((ms) => ms + 900)]);
    const step = (events: Parameters<typeof stepAtChange>[0]["events"]) => {
      const found = stepAtChange({ history, afterSession: 6, ...(events && { events }) });
      if (!found.known) throw new Error(JSON.stringify(found.reason));
      return found.value;
    };
    const [alone, beside] = [step(undefined), step([{ kind: "break", afterSession: 6 }])];
    expect(alone.estimate).toBeGreaterThan(500);
    expect(beside.estimate).toBeLessThan(alone.estimate);
    expect(beside.high - beside.low).toBeGreaterThan(alone.high - alone.low);
  });
});
