import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Figure, known, unknown } from "#domain";
import { accountLines, type ComboReview, type FactorGroups, type PeriodShift, wilsonInterval } from "#stats";
import {
  accountChangeReading,
  accountChangeTitle,
  answerOfDifferent,
  factorsReading,
  factorsTitle,
  individualsReading,
  individualsTitle,
  practiceReading,
  practiceTitle,
  sayBreak,
  sayBreaks,
  sayDifference,
  sayHours,
  sayMissing,
  sayPracticeRate,
  sayShareBefore,
  scatterShiftSays,
  sectorsReading,
  sectorsTitle,
  shiftReading,
  shiftTitle,
  thirdsReading,
  thirdsTitle,
  toldDifferences,
} from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const before = "the 4 weeks before";
const quarters = { laps: 104, lowerQuartile: 1, median: 2, upperQuartile: 3, slower: 0 };
const distribution: ComboReview["distribution"] = {
  bins: [],
  now: quarters,
  before: { ...quarters, laps: 82 },
};
const aShift = (estimate: number, low: number, high: number): Figure<PeriodShift> =>
  known({ estimate, low, high, sessions: 7, sessionsBefore: 5 });

describe("what changed since the period before", () => {
  it("says how much, and how much of it is sure", () => {
    const review = { shift: aShift(-468, -716, -231), distribution };
    expect(shiftTitle(review, before)).toBe(
      "Usual lap faster by 0.47 s than in the 4 weeks before, very likely at least 0.23 s",
    );
    expect(shiftReading(review)).toBe(
      "104 pace laps now, 82 before; 7 against 5 sessions. Counted by session, because laps of one session are alike. Whole periods are compared here; the gain at the top goes from the first session of this one to its last.",
    );
  });

  it("without a clear change says what is ruled out", () => {
    const review = { shift: aShift(-100, -250, 44), distribution };
    expect(shiftTitle(review, before)).toBe(
      "Usual lap not clearly faster or slower than in the 4 weeks before",
    );
    expect(shiftReading(review)).toMatch(
      /^It may be chance: between 0\.25 s faster and 0\.05 s slower\. 104 pace laps now/,
    );
  });

  it("with too few sessions says how many are missing", () => {
    const shift = unknown({
      needs: 4,
      of: "session",
      each: { needs: 5, of: "pace lap" },
      has: 1,
      period: "before",
    });
    expect(shiftTitle({ shift }, before)).toBe(
      "Not enough sessions with 5 pace laps each yet: 1 of 4 in the period before",
    );
  });

  it("balances the mean lap's change over its lines, and names those that chance may have moved", () => {
    const ms = { pace: -619, repeatability: 128, mistakes: 114, others: 44 };
    const accountChange: ComboReview["accountChange"] = known({
      before: 85_097,
      now: 84_764,
      change: -333,
      laps: 118,
      lapsBefore: 83,
      lines: accountLines.map((line) => ({
        line,
        ms: ms[line],
        shift: line === "pace" ? aShift(-586, -802, -393) : aShift(60, -90, 200),
      })),
    });
    expect(accountChangeTitle({ accountChange }, before)).toBe(
      "Mean lap faster by 0.33 s than in the 4 weeks before; pace moved most: −0.62 s, very likely",
    );
    expect(accountChangeReading({ accountChange })).toBe(
      "From 118 laps now and 83 before, each period against the same lap. The mean lap holds mistakes and traffic, which the usual lap does not. May be chance: uneven laps, mistakes, others on track.",
    );
  });
});

const claims = /\b(faster|slower|steadier|less steady) by\b|very likely/i;
const hedges = /not clearly|may be chance/i;
const interval = fc
  .tuple(
    fc.integer({ min: -3000, max: 3000 }),
    fc.integer({ min: 0, max: 2000 }),
    fc.integer({ min: 0, max: 2000 }),
  )
  .map(([estimate, under, over]) => ({ estimate, low: estimate - under, high: estimate + over }));

describe("every sentence about a change", () => {
  it("claims one only where the interval leaves out zero, and names chance where it does not", () =>
    fc.assert(
      fc.property(interval, (found) => {
        fc.pre(found.low !== 0 || found.high !== 0);
        const holdsZero = found.low <= 0 && found.high >= 0;
        const shift = known({ ...found, sessions: 6, sessionsBefore: 6 });
        const thirds = known({ ...found, sessions: 6, sessionsLeftOut: 2 });
        const percent = known({
          estimate: found.estimate / 1e4,
          low: found.low / 1e4,
          high: found.high / 1e4,
          sessions: 6,
          sessionsBefore: 6,
        });
        const difference = sayDifference({
          factor: "tyres",
          value: "soft",
          usual: "hard",
          difference: { ...found, basis: "same sessions", sessions: 6 },
        });
        const breakSays = sayBreak({
          from: "2026-01-01",
          to: "2026-01-12",
          days: 11,
          cost: known(found),
          lapsUntilBack: 40,
          isCompared: true,
        });
        const sentences = [
          shiftTitle({ shift }, before),
          thirdsTitle({ thirds }),
          scatterShiftSays({ scatterShift: percent }, before),
          difference,
          breakSays,
          answerOfDifferent({ shift, thirds }, before),
        ];
        for (const sentence of sentences) {
          expectWellFormed(sentence);
          expect(claims.test(sentence), sentence).toBe(!holdsZero);
          expect(hedges.test(sentence), sentence).toBe(holdsZero);
        }
        for (const reading of [shiftReading({ shift, distribution }), thirdsReading({ thirds })]) {
          expectWellFormed(reading);
          expect(/may be chance/.test(reading), reading).toBe(holdsZero);
        }
      }),
    ));

  it("puts nothing down to chance where nothing differed", () => {
    const same = { estimate: 0, low: 0, high: 0 };
    const shift = known({ ...same, sessions: 6, sessionsBefore: 6 });
    const thirds = known({ ...same, sessions: 6, sessionsLeftOut: 0 });
    const difference = { ...same, basis: "same sessions", sessions: 6 } as const;
    const sentences = [
      shiftTitle({ shift }, before),
      thirdsTitle({ thirds }),
      scatterShiftSays({ scatterShift: shift }, before),
      sayDifference({ factor: "tyres", value: "soft", usual: "hard", difference }),
    ];
    expect(sentences).toEqual([
      "Usual lap the same as in the 4 weeks before",
      "No difference late in a session",
      "The same as in the 4 weeks before.",
      "soft against hard: no difference, in the same 6 sessions",
    ]);
    for (const sentence of [...sentences, shiftReading({ shift, distribution }), thirdsReading({ thirds })]) {
      expectWellFormed(sentence);
      expect(hedges.test(sentence), sentence).toBe(false);
    }
  });

  it("calls no line of the account sure whose sessions may have moved by chance", () =>
    fc.assert(
      fc.property(interval, fc.integer({ min: -900, max: 900 }), (found, ms) => {
        const lines = accountLines.map((line) => ({
          line,
          ms: line === "pace" ? ms : 0,
          shift: known(found),
        }));
        const accountChange = known({ before: 0, now: ms, change: ms, laps: 9, lapsBefore: 9, lines });
        const title = accountChangeTitle({ accountChange }, before);
        expectWellFormed(title);
        const agrees = (found.low > 0 && ms > 0) || (found.high < 0 && ms < 0);
        expect(title.endsWith("very likely")).toBe(agrees);
      }),
    ));

  it("claims a share moved only where both intervals lie apart", () =>
    fc.assert(
      fc.property(fc.nat(40), fc.nat(40), fc.integer({ min: 40, max: 80 }), (a, b, trials) => {
        const [now, was] = [wilsonInterval(a, trials, 0.9), wilsonInterval(b, trials, 0.9)];
        const sentence = sayShareBefore(now, was, ["clearly more", "clearly fewer"]);
        expectWellFormed(sentence);
        const apart = (now?.low ?? 0) > (was?.high ?? 1) || (now?.high ?? 1) < (was?.low ?? 0);
        expect(/clearly/.test(sentence)).toBe(apart);
        expect(/may be chance/.test(sentence)).toBe(!apart && a !== b);
        expect(/no difference/.test(sentence)).toBe(a === b);
      }),
    ));
});

describe("sectors", () => {
  const lap = (ms: number, laps: number) => known({ ms, sectors: [], laps });
  const line = (gap: number) => ({ best: 1, usual: 1 + gap, gap });
  const sectors: ComboReview["sectors"] = known({
    sectors: [line(305), line(564), line(523)],
    best: 83_010,
    usual: 84_402,
    gap: 1392,
    largest: 1,
    laps: 125,
  });

  it("name the sector with the largest gap, and from how many laps each bound was picked", () => {
    expect(sectorsTitle({ sectors })).toBe(
      "Sector 2 costs most: 0.56 of the 1.39 s between your usual and your best sectors",
    );
    expect(sectorsReading({ sectors, bestSectors: lap(83_010, 146), reachable: lap(83_921, 125) })).toBe(
      "From the 125 pace laps with sectors in this period; those of one evening may point elsewhere. Best sectors together 1:23.010, picked from 146 clean laps: a bound, not a goal. A lap you can repeat 1:23.921: in each sector the time that every fourth of 125 pace laps beats.",
    );
  });
});

describe("what laps were driven with", () => {
  const group = (value: string, difference: FactorGroups["groups"][number]["difference"]) => ({
    value,
    laps: 20,
    sessions: 5,
    usual: { ms: 84_000, decimals: 3 },
    difference,
  });
  const found = (estimate: number, low: number, high: number) =>
    known({ estimate, low, high, basis: "same sessions" as const, sessions: 6 });
  const factors = (difference: FactorGroups["groups"][number]["difference"]): FactorGroups[] => [
    {
      factor: "tyres",
      groups: [group("hard", unknown({ because: "the most driven" })), group("soft", difference)],
    },
  ];

  it("puts clear differences first, and says that it is not a test", () => {
    const clear = factors(found(-120, -200, -40));
    expect(factorsTitle(clear)).toBe("With soft faster by 0.12 s, very likely at least 0.04 s, against hard");
    expect(factorsReading(clear)).toMatch(/^Not a test/);
    expect(factorsReading(clear)).not.toContain("A comparison needs");
    const few = factors(
      unknown({ needs: 4, of: "session of each kind", each: { needs: 3, of: "clean lap" }, has: 2 }),
    );
    expect(factorsReading([...clear, ...few])).toMatch(/^Not a test.+A comparison needs 4 sessions/);
    const [, one] = [...factors(found(900, -10, 2000)), ...clear];
    expect(
      toldDifferences([...factors(found(900, -10, 2000)), one ?? clear[0]].filter((x) => x !== undefined))[0]
        ?.difference.estimate,
    ).toBe(-120);
  });

  it("says when nothing can be told apart", () => {
    expect(
      factorsTitle(
        factors(
          unknown({ needs: 4, of: "session of each kind", each: { needs: 3, of: "clean lap" }, has: 2 }),
        ),
      ),
    ).toBe("Too few sessions to compare by tyres");
    expect(factorsTitle([])).toBe("Everything noted stayed the same");
    expect(
      sayMissing({ needs: 4, of: "session of each kind", each: { needs: 3, of: "clean lap" }, has: 2 }),
    ).toBe("too few sessions: 2 of 4");
  });
});

describe("practice", () => {
  const amount = {
    sessions: 22,
    laps: 454,
    drivingMs: 39_081_560,
    sittingMs: 47_015_178,
    sittingsKnown: 21,
    days: [],
  };
  const none = { ...amount, sessions: 0, laps: 0, drivingMs: 0, sittingMs: 0, sittingsKnown: 0 };

  it("counts sessions, laps and hours, now and before", () => {
    expect(practiceTitle(amount)).toBe("22 sessions, 454 laps, 10\u00a0h\u00a051\u00a0min at the wheel");
    expect(practiceReading(amount, none, "the 12 weeks before")).toBe(
      "Time at the wheel is the sum of the laps; a lap without a time counts as a usual one. From start to end of the sessions 13\u00a0h\u00a004\u00a0min (start and end known of 21). In the 12 weeks before: no session.",
    );
    expect(sayHours(1_700_000)).toBe("28\u00a0min");
    expect(sayPracticeRate({ sessionsAWeek: 11 / 6, lapsASession: 20.3, sessions: 11 })).toBe(
      "Forecast for six weeks at the rate of the last six: 1.8 sessions a week of 20 timed laps, from 11 sessions.",
    );
    expectWellFormed(sayPracticeRate(undefined));
  });

  it("says what a break cost, or why that cannot be told", () => {
    const cost = unknown({ needs: 4, of: "step of neighbouring sessions", has: 1 });
    expect(
      sayBreak({ from: "2026-11-04", to: "2026-11-18", days: 14, cost, lapsUntilBack: 14, isCompared: true }),
    ).toBe(
      "14 days without a session until Wed 18 Nov 2026: what it cost cannot be told yet, not enough pairs of sessions in a row yet: 1 of 4. A session as fast as the last one before it came after 14 laps.",
    );
    const clear = known({ estimate: 420, low: 100, high: 700 });
    expect(
      sayBreak({
        from: "2026-11-04",
        to: "2026-11-18",
        days: 14,
        cost: clear,
        lapsUntilBack: 14,
        isCompared: true,
      }),
    ).toMatch(/slower by 0\.42 s.* You were as fast as before after 14 laps\.$/);
    expect(sayBreaks([])).toBe("no break of ten days or more");
  });
});

describe("single laps", () => {
  const laps = [84_000, 84_100, 84_050, 84_020, 90_000].map((ms, index) => ({
    lapId: `${index}`,
    run: 0,
    ms,
  }));
  const chart = { centre: 85_234, sigma: 500, lower: 83_734, upper: 86_734, outside: [4], sameSide: [] };

  it("are pointed at by number, with how often chance alone does so", () => {
    const session = { laps, chart, pointedAt: [{ index: 4, reasons: ["outside the limits" as const] }] };
    expect(individualsTitle(session)).toBe("1 of 5 pace laps worth a second look");
    expect(individualsReading(session)).toBe(
      "Mean 1:25.234, limits 1:23.734 and 1:26.734. Worth a second look: lap 5. By chance alone 3 of 20 sessions this long have one. What it was, you decide.",
    );
    expect(individualsTitle({ laps: laps.slice(3), chart: undefined, pointedAt: [] })).toBe(
      "Not enough pace laps yet: 2 of 5",
    );
  });
});
