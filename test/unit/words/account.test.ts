import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import { type TimeAccount, timeAccount } from "#stats";
import { accountLineMeanings, accountLineNames, accountReading, accountTitle } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

function anAccount(lines: Partial<TimeAccount>): {
  readonly account: { readonly known: true; readonly value: TimeAccount };
} {
  const { pace = 0, repeatability = 0, mistakes = 0, others = 0, ...beside } = lines;
  const balance = pace + repeatability + mistakes + others;
  return {
    account: known({
      pace,
      repeatability,
      mistakes,
      others,
      balance,
      laps: 31,
      cutLaps: 0,
      notBestLaps: 0,
      withoutTime: 0,
      sessions: 1,
      sessionsLeftOut: 0,
      ...beside,
    }),
  };
}

describe("the time account's title", () => {
  it.each<[Partial<TimeAccount>, string]>([
    [{ repeatability: 560, pace: 300, mistakes: 150 }, "Uneven laps cost most: 0.56 of 1.01 s a lap"],
    [{ repeatability: 560, pace: 480, mistakes: 400 }, "Uneven laps cost most: 0.56 of 1.44 s a lap"],
    [
      { repeatability: 560, pace: -300, mistakes: 150 },
      "Uneven laps cost 0.56 s a lap; good pace wins most of it back",
    ],
    [
      { repeatability: 560, pace: -270, mistakes: 150 },
      "Uneven laps cost 0.56 s a lap; good pace wins some of it back",
    ],
    [
      { pace: 560, mistakes: -300, others: -10 },
      "Pace costs 0.56 s a lap; laps with a mistake win most of it back",
    ],
    [{ mistakes: 560, others: -100 }, "Mistakes cost 0.56 s a lap; others on track win some of it back"],
    [{ pace: 560, repeatability: 480 }, "Pace costs most: 0.56 of 1.04 s a lap"],
    [{ others: 900, repeatability: 100 }, "Others on track cost most: 0.90 of 1.00 s a lap"],
    [{ pace: -400, repeatability: 280 }, "Mean lap 0.12 s faster than the times it is measured against"],
    [{}, "Mean lap the same as the times it is measured against"],
  ])("%o", (lines, title) => {
    expect(accountTitle(anAccount(lines))).toBe(title);
    expectWellFormed(title);
  });

  it.each([
    ["target", "Mean lap 0.12 s faster than the target nearest in date"],
    ["session", "Mean lap 0.12 s faster than the session's target"],
    ["reference", "Mean lap 0.12 s faster than the reference lap"],
    ["pb", "Mean lap 0.12 s faster than the PB before the session"],
  ] as const)("names a target only where there is one: %s", (from, title) =>
    expect(
      accountTitle({ ...anAccount({ pace: -400, repeatability: 280 }), target: { ms: 83_704, from } }),
    ).toBe(title),
  );

  it.each([
    ["target", "Pace costs most: 1.25 of the 2.01 s to your target"],
    ["session", "Pace costs most: 1.25 of the 2.01 s to the session's target"],
    ["reference", "Pace costs most: 1.25 of the 2.01 s to the reference lap"],
    ["pb", "Pace costs most: 1.25 of the 2.01 s to the PB before the session"],
  ] as const)("says how far the %s is", (from, title) =>
    expect(accountTitle({ ...anAccount({ pace: 1250, mistakes: 760 }), target: { ms: 83_704, from } })).toBe(
      title,
    ),
  );

  it("says how many laps are missing", () =>
    expect(
      accountTitle({ account: unknown({ needs: 5, of: "pace lap", has: 3, where: "in the best session" }) }),
    ).toBe("Not enough pace laps yet: 3 of 5 in its best session"));
});

describe("the time account's reading", () => {
  it("names the target and counts what stays out", () =>
    expect(
      accountReading({
        ...anAccount({ repeatability: 560, mistakes: 150, cutLaps: 2, withoutTime: 1 }),
        target: { ms: 83_704, from: "pb" },
      }),
    ).toBe(
      "Against the PB before the session, 1:23.704, from 31 laps of pace runs: the mean lap, mistakes included, is at +0.71 s. To work on: uneven laps, 0.56 s a lap. Not in it: 2 cut laps and 1 lap without a time.",
    ));

  it("names laps that were taken back as a best", () =>
    expect(accountReading(anAccount({ repeatability: 560, cutLaps: 1, notBestLaps: 2 }))).toContain(
      "Not in it: 1 cut lap and 2 laps marked not a PB.",
    ));

  it("of a period says that each session had its own target", () =>
    expect(accountReading(anAccount({ others: 200, sessions: 6, sessionsLeftOut: 2 }))).toBe(
      "Each session against its own target, reference lap or PB, from 31 laps of pace runs in 6 sessions: the mean lap, mistakes included, is at +0.20 s. Nothing of yours costs time against it. Not in it: 2 sessions with too few laps or no target.",
    ));

  it("has a name and a meaning for each line", () =>
    expect(Object.keys(accountLineMeanings)).toEqual(Object.keys(accountLineNames)));
});

describe("an account with laps confirmed as odd", () => {
  const usual = [84_000, 84_500, 84_200, 84_300, 84_500, 84_500, 84_500, 84_500, 84_500];
  const drive = (...odd: [ms: number, kind: "off" | "traffic" | undefined][]) =>
    timeAccount(
      [
        [
          ...usual.map((ms) => ({ ms, remarks: [], pace: true })),
          ...odd.map(([ms, kind]) => ({
            ms,
            remarks: kind === undefined ? [] : [{ kind }],
            pace: kind === undefined,
            isOdd: true,
          })),
        ],
      ],
      84_000,
    );

  it("says what one lap did to it, and what to work on without that lap", () => {
    const account = drive([1_500_000, "off"]);
    expect(accountTitle({ account })).toBe("One lap of 25:00.000 adds 2:21.56 a lap to mistakes");
    expect(accountReading({ account, target: { ms: 84_000, from: "session" } })).toBe(
      "Against the session's target, 1:24.000, from 10 laps of pace runs: the mean lap, mistakes included, is at +2:21.95. To work on, laps confirmed as odd left aside: uneven laps, 0.39 s a lap.",
    );
    expectWellFormed(accountTitle({ account }));
  });

  it("names a lap that made a smaller line in the reading, and counts several", () => {
    const account = drive([1_500_000, "off"], [900_000, "off"], [400_000, "traffic"]);
    expect(accountTitle({ account })).toMatch(/^2 laps of up to 25:00\.000 add .* a lap to mistakes$/);
    const reading = accountReading({ account });
    expect(reading).toContain("One lap of 6:40.000 adds ");
    expect(reading).toContain(" a lap to others on track.");
    expectWellFormed(reading);
  });

  it("says where too few laps are left to say what to work on", () => {
    const few = [84_000, 84_100, 84_200, 84_300].map((ms) => ({ ms, remarks: [], pace: true }));
    const account = timeAccount([[...few, { ms: 1_500_000, remarks: [], pace: true, isOdd: true }]], 84_000);
    expect(accountReading({ account })).toContain(
      "Too few pace laps are left without it to say what to work on.",
    );
  });
});

describe("any time account", () => {
  const laps = fc.array(
    fc.record({
      ms: fc.option(fc.integer({ min: 80_000, max: 95_000 }), { nil: undefined }),
      kind: fc.constantFrom("clean", "cut", "off", "traffic"),
    }),
    { minLength: 5, maxLength: 40 },
  );

  it("names the line with the greatest loss, and a share that is true", () =>
    fc.assert(
      fc.property(laps, fc.integer({ min: 80_000, max: 90_000 }), (driven, targetMs) => {
        const session = driven.map(({ ms, kind }) => ({
          ms,
          pace: kind === "clean" && ms !== undefined,
          remarks: kind === "clean" ? [] : [{ kind }],
        })) as Parameters<typeof timeAccount>[0][number];
        const account = timeAccount([session], targetMs);
        const title = accountTitle({ account });
        expectWellFormed(title);
        expectWellFormed(accountReading({ account, target: { ms: targetMs, from: "session" } }));
        if (!account.known || account.value.balance <= 0) return;
        const { pace, repeatability, mistakes, others, balance } = account.value;
        const named = {
          Pace: pace,
          "Uneven laps": repeatability,
          Mistakes: mistakes,
          "Others on track": others,
        };
        const largest = Math.max(pace, repeatability, mistakes, others);
        const inTitle = Object.entries(named).filter(([name]) => title.startsWith(name));
        expect(inTitle.map(([, ms]) => ms)).toEqual([largest]);
        const isHelped = Math.min(pace, repeatability, mistakes, others) < 0;
        expect(/ (some|most) of it back$/.test(title)).toBe(isHelped);
        const told = [...title.matchAll(/[\d.]+/g)].map(Number);
        for (const [index, ms] of (isHelped ? [largest] : [largest, balance]).entries())
          expect(Math.abs((told[index] ?? 0) * 1000 - ms)).toBeLessThanOrEqual(10);
      }),
      { seed: 2 },
    ));
});
