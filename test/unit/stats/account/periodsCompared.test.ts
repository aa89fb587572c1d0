import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { accountChange, type LapInAccount, periodShift, rankSumTest } from "#stats";

const times = fc.integer({ min: 60_000, max: 120_000 });
const beside = { isNotBest: false, isOdd: false };
const lap = fc.oneof(
  fc.record<LapInAccount>({
    ms: times,
    place: fc.constantFrom("pace", "pace", "pace", "mistake", "others", "cut", "wet"),
    isNotBest: fc.boolean(),
    isOdd: fc.boolean(),
  }),
  fc.constant<LapInAccount>({ ms: undefined, place: "noTime", ...beside }),
);
const sessions = fc.array(fc.array(lap, { maxLength: 20 }), { maxLength: 6 });
const pace = (ms: number): LapInAccount => ({ ms, place: "pace", ...beside });

describe("the shift between two periods", () => {
  it("is the rank-sum shift of the sessions", () => {
    const [now, before] = [
      [84_000, 84_100, 84_050, 83_900, 84_020],
      [84_500, 84_600, 84_450, 84_700, 84_550],
    ];
    const test = rankSumTest(now, before, 0.9);
    expect(periodShift(now, before)).toEqual({
      known: true,
      value: { estimate: test?.estimate, low: test?.low, high: test?.high, sessions: 5, sessionsBefore: 5 },
    });
  });

  it("needs five sessions on each side, and says which side lacks them", () => {
    expect(periodShift([1, 2, 3, 4], [1, 2, 3, 4, 5])).toEqual({
      known: false,
      reason: { needs: 5, of: "session", each: { needs: 5, of: "pace lap" }, has: 4 },
    });
    expect(periodShift([1, 2, 3, 4, 5], [1])).toEqual({
      known: false,
      reason: { needs: 5, of: "session", each: { needs: 5, of: "pace lap" }, has: 1, period: "before" },
    });
  });

  it("is nothing where all sessions are alike", () => {
    expect(periodShift([5, 5, 5, 5, 5], [5, 5, 5, 5, 5])).toMatchObject({
      value: { estimate: 0, low: 0, high: 0 },
    });
  });
});

describe("the change of the time account", () => {
  it("balances to the millisecond: before and its lines make now", () =>
    fc.assert(
      fc.property(sessions, sessions, (now, before) => {
        const change = accountChange(now, before);
        if (!change.known) return;
        const { lines, before: was, now: is, change: whole } = change.value;
        expect(lines.every(({ ms }) => Number.isInteger(ms))).toBe(true);
        expect(was + lines.reduce((sum, { ms }) => sum + ms, 0)).toBe(is);
        expect(is - was).toBe(whole);
      }),
    ));

  it("puts a gain of the best laps under pace, and none elsewhere", () => {
    const [now, before] = [84_000, 84_500].map((base) =>
      [0, 100, 200, 300, 400].map((off) => pace(base + off)),
    );
    const change = accountChange([now ?? []], [before ?? []]);
    expect(change).toMatchObject({ value: { change: -500 } });
    if (change.known) expect(change.value.lines.map(({ ms }) => ms)).toEqual([-500, 0, 0, 0]);
  });

  it("needs a session with five pace laps on both sides", () => {
    expect(accountChange([[1, 2, 3, 4, 5].map(pace)], [])).toEqual({
      known: false,
      reason: { needs: 5, of: "pace lap", has: 0, period: "before" },
    });
  });
});
