import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Remark } from "#domain";
import { bestOfK, type LapForAccount, largestLine, mean, timeAccount } from "#stats";

const pace = (...times: number[]): LapForAccount[] => times.map((ms) => ({ ms, remarks: [], pace: true }));
const marked = (kind: Remark["kind"], ms?: number): LapForAccount => ({
  ms,
  remarks: [{ kind }],
  pace: false,
});

const anyLap = fc.record({
  ms: fc.option(fc.integer({ min: 60_000, max: 150_000 }), { nil: undefined }),
  remarks: fc.array(fc.constantFrom("out", "in", "cut", "off", "spin", "contact", "traffic", "slow"), {
    maxLength: 2,
  }),
  pace: fc.boolean(),
  isOdd: fc.boolean(),
});
const session = fc
  .array(anyLap, { maxLength: 40 })
  .map((laps) => laps.map((lap) => ({ ...lap, remarks: lap.remarks.map((kind) => ({ kind }) as Remark) })));

function accountOf(sessions: LapForAccount[][], target: number | number[]) {
  const account = timeAccount(sessions, target);
  if (!account.known) throw new Error(JSON.stringify(account.reason));
  return account.value;
}

describe("time account", () => {
  it("splits the average lap's distance to the target", () => {
    const laps = [
      ...pace(84_000, 84_100, 84_200, 84_300, 84_400),
      marked("off", 90_200),
      marked("traffic", 86_200),
    ];
    expect(accountOf([laps], 83_900)).toEqual({
      pace: 100,
      repeatability: 200,
      mistakes: 1000,
      others: 143,
      balance: 1443,
      laps: 7,
      cutLaps: 0,
      notBestLaps: 0,
      withoutTime: 0,
      sessions: 1,
      sessionsLeftOut: 0,
    });
  });

  it("the four lines add up to the balance to the millisecond, whatever was driven", () => {
    fc.assert(
      fc.property(
        fc.array(session, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 60_000, max: 150_000 }),
        (sessions, target) => {
          const account = timeAccount(sessions, target);
          if (!account.known) return;
          const { pace, repeatability, mistakes, others, balance } = account.value;
          expect(pace + repeatability + mistakes + others).toBe(balance);
          for (const line of [pace, repeatability, mistakes, others])
            expect(Number.isInteger(line)).toBe(true);
          const { parts = [], without } = account.value.odd ?? {};
          for (const { line, perLap, laps } of parts) {
            expect(perLap * 2).toBeGreaterThan(account.value[line]);
            expect(laps).toBeGreaterThan(0);
          }
          if (without === undefined) return;
          const { pace: best, repeatability: spread, mistakes: own, others: others2 } = without;
          expect(best + spread + own + others2).toBe(without.balance);
        },
      ),
      { seed: 3, numRuns: 500 },
    );
  });

  it("takes the best of ten where there are ten pace laps, else of all", () => {
    const twelve = Array.from({ length: 12 }, (_, lap) => 84_000 + 37 * lap);
    expect(accountOf([pace(...twelve)], 0).pace).toBe(Math.round(bestOfK(twelve, 10) ?? 0));
    expect(accountOf([pace(...twelve.slice(0, 7))], 0).pace).toBe(84_000);
  });

  it("leaves out cut laps, laps without a time, out laps and laps that are no pace laps, and counts the first two", () => {
    const usual = pace(84_000, 84_100, 84_200, 84_300, 84_400);
    const more: LapForAccount[] = [
      marked("cut", 70_000),
      { ms: 70_000, remarks: [{ kind: "off" }, { kind: "cut" }], pace: false },
      marked("off"),
      { remarks: [], pace: false },
      marked("out", 120_000),
      marked("in"),
      { ms: 99_000, remarks: [], pace: false },
    ];
    expect(accountOf([[...usual, ...more]], 84_000)).toEqual({
      ...accountOf([usual], 84_000),
      cutLaps: 2,
      withoutTime: 2,
    });
  });

  it("leaves out a pace lap that the driver took back as a best, as it may be one that was cut", () => {
    const usual = pace(84_000, 84_100, 84_200, 84_300, 84_400);
    const takenBack: LapForAccount = { ms: 80_000, remarks: [], pace: true, isNotBest: true };
    const slow: LapForAccount = { ms: 95_000, remarks: [{ kind: "off" }], pace: false, isNotBest: true };
    expect(accountOf([[...usual, takenBack]], 84_000)).toEqual({
      ...accountOf([usual], 84_000),
      notBestLaps: 1,
    });
    expect(accountOf([[...usual, slow]], 84_000)).toMatchObject({ notBestLaps: 0, mistakes: 1800 });
  });

  it("a mistake in traffic is the driver's own", () => {
    const both: LapForAccount = { ms: 90_000, remarks: [{ kind: "traffic" }, { kind: "spin" }], pace: false };
    expect(accountOf([[...pace(84_000, 84_000, 84_000, 84_000, 84_000), both]], 84_000)).toMatchObject({
      mistakes: 1000,
      others: 0,
    });
  });

  it("needs five pace laps in one session", () => {
    expect(timeAccount([pace(1, 2, 3, 4)], 1)).toEqual({
      known: false,
      reason: { needs: 5, of: "pace lap", has: 4 },
    });
    expect(timeAccount([pace(1, 2, 3, 4), pace(1)], 1)).toEqual({
      known: false,
      reason: { needs: 5, of: "pace lap", has: 4, where: "in the best session" },
    });
    expect(timeAccount([], 1)).toEqual({ known: false, reason: { needs: 5, of: "pace lap", has: 0 } });
  });

  it("over a period is the sessions' mean weighted by their laps, so a gain between them is no unevenness", () => {
    const slow = pace(85_000, 85_000, 85_000, 85_000, 85_000);
    const fast = pace(...new Array<number>(15).fill(84_000));
    const account = accountOf([slow, fast, pace(1, 2)], 84_000);
    expect(account).toMatchObject({
      pace: 250,
      repeatability: 0,
      balance: 250,
      sessions: 2,
      sessionsLeftOut: 1,
    });
    expect(account.balance).toBe(
      Math.round((mean([...slow, ...fast].map((lap) => lap.ms ?? 0)) ?? 0) - 84_000),
    );
  });

  it("measures each session against its own target", () => {
    const laps = pace(84_000, 84_000, 84_000, 84_000, 84_000);
    expect(accountOf([laps, laps], [83_000, 84_000]).balance).toBe(500);
    expect(() => timeAccount([laps, laps], [83_000])).toThrow(
      new RangeError("targetMs has 1 targets for 2 sessions"),
    );
    expect(() => timeAccount([laps, laps], [83_000, Number.NaN])).toThrow(/^targetMs\[1\] is NaN/);
  });

  it("does not hang on the order of the laps", () => {
    fc.assert(
      fc.property(session, (laps) => {
        expect(timeAccount([laps.toReversed()], 84_000)).toEqual(timeAccount([laps], 84_000));
      }),
      { seed: 12, numRuns: 200 },
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses a time or a target of %d", (wrong) => {
    expect(() => timeAccount([pace(84_000, wrong)], 84_000)).toThrow("sessions[0][1]");
    expect(() => timeAccount([pace(84_000)], wrong)).toThrow("targetMs");
  });
});

describe("what to work on", () => {
  it("is the largest loss that is the driver's own", () => {
    expect(largestLine({ pace: 40, repeatability: 300, mistakes: 120 })).toEqual({
      line: "repeatability",
      ms: 300,
    });
    expect(largestLine({ pace: 400, repeatability: 300, mistakes: 120 })?.line).toBe("pace");
    expect(largestLine({ pace: -40, repeatability: 0, mistakes: 0 })).toBeUndefined();
  });
});

describe("laps that the driver confirmed as far beyond the usual", () => {
  const usual = [84_000, 84_500, 84_200, 84_300, 84_500, 84_500, 84_500, 84_500];
  const odd = (lap: LapForAccount): LapForAccount => ({ ...lap, isOdd: true });
  const lost = odd(marked("off", 1_500_000));

  it("one lap of 25 minutes is not called what to work on: the account says what it did", () => {
    const account = accountOf([[...pace(...usual), marked("spin", 85_000), lost]], 84_000);
    const without = accountOf([[...pace(...usual), marked("spin", 85_000)]], 84_000);
    expect(account.mistakes).toBeGreaterThan(100_000);
    expect(account.odd?.parts).toEqual([
      { line: "mistakes", laps: 1, slowest: 1_500_000, perLap: account.mistakes - without.mistakes },
    ]);
    expect(account.odd?.without).toMatchObject({ mistakes: without.mistakes, balance: without.balance });
    expect(largestLine(account)).toEqual({ line: "repeatability", ms: without.repeatability });
    expect(largestLine({ ...account, odd: undefined })?.line).toBe("mistakes");
  });

  it("two such laps are told of together", () => {
    const account = accountOf([[...pace(...usual), lost, odd(marked("spin", 900_000))]], 84_000);
    expect(account.odd?.parts).toMatchObject([{ line: "mistakes", laps: 2, slowest: 1_500_000 }]);
    expect(largestLine(account)?.line).toBe("repeatability");
  });

  it("say nothing where they make little of a line", () => {
    const slow = Array.from({ length: 6 }, () => marked("off", 120_000));
    expect(
      accountOf([[...pace(...usual), ...slow, odd(marked("off", 121_000))]], 84_000).odd,
    ).toBeUndefined();
    const allOdd = accountOf([[...pace(...usual), odd(marked("cut", 1_500_000))]], 84_000);
    expect(allOdd.odd).toBeUndefined();
  });

  it("leave nothing to work on where fewer than five pace laps remain", () => {
    const account = accountOf([[...pace(...usual.slice(0, 4)), ...pace(1_500_000).map(odd)]], 84_000);
    expect(account.odd).toMatchObject({ parts: [{ line: "repeatability", laps: 1 }], without: undefined });
    expect(largestLine(account)).toBeUndefined();
  });

  it("of one session leave the account of a period to the others", () => {
    const sessions = [[...pace(...usual), lost], pace(...usual)];
    const account = accountOf(sessions, 84_000);
    expect(account.odd?.without).toMatchObject({ mistakes: 0 });
    expect(account.odd?.parts).toMatchObject([{ line: "mistakes", perLap: account.mistakes }]);
  });
});
