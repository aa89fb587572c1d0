import { describe, expect, it } from "vitest";
import {
  type ComboReviewInput,
  comboReview,
  pageEvents,
  pageHistory,
  type SessionDigest,
  sessionDigest,
} from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";
import { aPage, aRun, aSession, choices } from "../someRows.ts";

/** Sessions of two runs of eight laps, two days apart, each so much faster than the one before. */
function sessions(count: number, gain: number, scatter = 80, first = 0): SessionDigest[] {
  return Array.from({ length: count }, (_, number) => {
    const run = (n: number) =>
      aRun(
        n,
        Array.from({ length: 8 }, (_, lap) =>
          Math.round(84_000 - gain * number + scatter * normalAt(23, number, n, lap)),
        ),
        { sessionId: `session ${number + first}` },
      );
    return sessionDigest(aSession(first + 2 * number), [run(1), run(2)], choices);
  });
}
const review = (digests: readonly SessionDigest[], input: Partial<ComboReviewInput> = {}) =>
  comboReview({
    comboId: "combo",
    digests,
    pages: [],
    period: {},
    today: "2026-06-01",
    targets: [],
    references: [],
    preferences: choices,
    ...input,
  });

describe("trend over sessions", () => {
  it("finds a steady gain, per week and per hundred laps", () => {
    const { trend } = review(sessions(12, 60));
    expect(trend).toMatchObject({ known: true, value: { finding: "falling", sessions: 12 } });
    if (!trend.known) return;
    // 60 ms every two days is 210 a week; sixteen laps a session make 375 a hundred laps.
    expect(trend.value.perWeek.low).toBeLessThan(-210);
    expect(trend.value.perWeek.high).toBeGreaterThan(-210);
    expect(trend.value.perWeek.slope).toBeCloseTo(-210, -2);
    expect(trend.value.per100Laps?.slope).toBeCloseTo(-375, -2);
  });

  it("without a clear change still says what is ruled out and how many sessions would show one", () => {
    const { trend } = review(sessions(6, 0, 500));
    expect(trend).toMatchObject({ known: true, value: { finding: "no clear change" } });
    if (!trend.known) return;
    expect(trend.value.perWeek.low).toBeLessThan(0);
    expect(trend.value.perWeek.high).toBeGreaterThan(0);
    expect(trend.value.change).toBeCloseTo(420, -1);
    expect(trend.value.moreSessions).toBeGreaterThanOrEqual(0);
  });

  it("needs five sessions with five pace laps", () => {
    expect(review(sessions(4, 60)).trend).toEqual({
      known: false,
      reason: { needs: 5, of: "session", each: { needs: 5, of: "pace lap" }, has: 4 },
    });
  });
});

describe("pages and period", () => {
  const digests = sessions(10, 30);
  const pages = [aPage(aSession(8).startedAt)];

  it("old pages are points in grey and nothing else", () => {
    const found = review(digests, { pages });
    expect(found.points.map((point) => point.isPresentPage)).toEqual([
      ...new Array(4).fill(false),
      ...new Array(6).fill(true),
    ]);
    expect(found).toMatchObject({ sessions: 6, sessionsOnOldPages: 4 });
    expect(found.counts.driven).toBe(6 * 16);
    expect(found.bests[0]?.sessionId).toBe("session 8");
    expect(found.history[0]).toMatchObject({ lapsBefore: 0, laps: 16 });
  });

  it("a period cuts the figures, not the personal-best line and the history", () => {
    const found = review(digests, { period: { from: "2026-01-11", to: "2026-01-15" } });
    expect(found.points.map((point) => point.date)).toEqual(["2026-01-11", "2026-01-13", "2026-01-15"]);
    expect(found.history).toHaveLength(10);
    expect(found.bests[0]?.date).toBe("2026-01-01");
    expect(found.distribution.now?.laps).toBe(3 * 16);
    // The five days before: 6 to 10 January.
    expect(found.before.counts.driven).toBe(2 * 16);
  });

  it("“surely more than 1.64 s” beside “perhaps by chance”: two sessions are compared with nothing", () => {
    const found = review(digests, { period: { from: "2026-01-11", to: "2026-01-15" } });
    const reason = { needs: 5, of: "session", each: { needs: 5, of: "pace lap" }, has: 3 };
    expect(found.against).toEqual({ known: false, reason });
    for (const figure of [found.shift, found.scatterShift, found.accountChange])
      expect(figure).toEqual({ known: false, reason });
    expect(found.distribution.before).toBeUndefined();
  });

  it("does not hang on the order of the digests", () => {
    expect(review(digests.toReversed(), { pages })).toEqual(review(digests, { pages }));
  });

  it("nothing yet gives reasons and empty lists", () => {
    const found = review([]);
    expect(found).toMatchObject({
      points: [],
      bests: [],
      sessions: 0,
      cleanShare: undefined,
      daysSinceLast: undefined,
    });
    for (const figure of [found.trend, found.steadiness, found.account, found.sectors])
      expect(figure.known).toBe(false);
  });
});

describe("personal-best line over sessions", () => {
  it("follows the rule for tenths across sessions, and a summary can be a step", () => {
    const digests = [
      sessionDigest(aSession(0), [aRun(1, [84_500, 83_456])], choices),
      sessionDigest(
        aSession(1),
        [aRun(1, [{ ms: 83_400, decimals: 1 }, 83_450], { sessionId: "b" })],
        choices,
      ),
      sessionDigest(
        aSession(2),
        [aRun(1, [], { id: "summary", summary: { laps: 9, bestMs: 83_300 } })],
        choices,
      ),
    ];
    const { bests } = review(digests);
    expect(bests.map((best) => [best.ms, best.date, best.isSummary])).toEqual([
      [84_500, "2026-01-01", false],
      [83_456, "2026-01-01", false],
      [83_450, "2026-01-02", false],
      [83_300, "2026-01-03", true],
    ]);
  });
});

describe("time account of a period", () => {
  it("measures each session against the best before it and balances as a whole", () => {
    const { accounts, account } = review(sessions(6, 100));
    expect(accounts[0]?.target).toBeUndefined();
    expect(accounts.slice(1).every((session) => session.target?.from === "pb")).toBe(true);
    expect(account).toMatchObject({ known: true, value: { sessions: 5, sessionsLeftOut: 1 } });
    if (!account.known) return;
    const { pace, repeatability, mistakes, others, balance } = account.value;
    expect(pace + repeatability + mistakes + others).toBe(balance);
  });
});

describe("steadiness", () => {
  it("finds sessions that become more even", () => {
    const digests = Array.from({ length: 10 }, (_, number) => {
      const swing = 400 - 35 * number;
      const laps = Array.from({ length: 10 }, (_, lap) => 84_000 + (lap % 2 === 0 ? swing : 0));
      return sessionDigest(aSession(number), [aRun(1, laps)], choices);
    });
    expect(review(digests).steadiness).toMatchObject({ known: true, value: { finding: "falling" } });
  });
});

describe("dated events", () => {
  const { history } = review([...sessions(3, 0), ...sessions(2, 0, 80, 20)]);

  it("are breaks of ten days or more, one going on today included, and steps given", () => {
    expect(pageEvents(history, "2026-02-20", ["2026-01-04", "2025-12-01"])).toEqual([
      { kind: "step", afterSession: 2 },
      { kind: "break", afterSession: 3 },
      { kind: "break", afterSession: 5 },
    ]);
    expect(pageEvents(history, history.at(-1)?.date ?? "")).toEqual([{ kind: "break", afterSession: 3 }]);
    expect(pageEvents([], "2026-02-20")).toEqual([]);
  });

  it("a session too short for a usual lap ends a break too", () => {
    const short = sessionDigest(aSession(7), [aRun(1, [84_000, 84_100])], choices);
    const { history: known } = review([...sessions(1, 0), short, ...sessions(1, 0, 80, 14)]);
    expect(known).toHaveLength(2);
    expect(pageEvents(known, "2026-01-15")).toEqual([]);
    const [last] = review([...sessions(1, 0), short]).history;
    if (last === undefined) throw new Error("one session has a usual lap");
    expect(pageEvents([last], "2026-01-17")).toEqual([]);
    expect(pageEvents([last], "2026-01-18")).toEqual([{ kind: "break", afterSession: 1 }]);
  });

  it("of a page that follows another: a break that began on the old page comes before the first session", () => {
    const digests = [...sessions(2, 0), ...sessions(3, 0, 80, 20)];
    const turned = review(digests, { pages: [aPage(aSession(20).startedAt)] });
    expect(turned.history).toHaveLength(3);
    expect(pageEvents(turned.history, "2026-01-26")).toEqual([{ kind: "break", afterSession: 0 }]);
    const soon = review([...sessions(2, 0), ...sessions(3, 0, 80, 11)], {
      pages: [aPage(aSession(11).startedAt)],
    });
    expect(pageEvents(soon.history, "2026-01-17")).toEqual([]);
    // The first session of a combo follows none.
    expect(pageEvents(review(digests).history, "2026-01-26")).toEqual([{ kind: "break", afterSession: 2 }]);
  });

  it("of a page that has ended: driving on the next one ends a break", () => {
    const digests = [...sessions(2, 0), ...sessions(3, 0, 80, 9)];
    const old = pageHistory(digests.slice(0, 2), digests);
    expect(pageEvents(old, "2026-01-20")).toEqual([]);
    expect(pageEvents(pageHistory(digests.slice(0, 2)), "2026-01-20")).toEqual([
      { kind: "break", afterSession: 2 },
    ]);
  });

  it("what was driven after the day that is asked about ends no break, and begins none", () => {
    const digests = [...sessions(1, 0), sessionDigest(aSession(14), [aRun(1, [84_000])], choices)];
    const known = pageHistory(digests);
    expect(pageEvents(known, "2026-01-05")).toEqual([]);
    expect(pageEvents(known, "2026-01-14")).toEqual([{ kind: "break", afterSession: 1 }]);
  });

  it("a session that was emptied ends no break", () => {
    const digests = [...sessions(1, 0), sessionDigest(aSession(7), [aRun(1, [])], choices)];
    expect(pageEvents(pageHistory(digests), "2026-01-15")).toEqual([{ kind: "break", afterSession: 1 }]);
  });

  it("a step of the day of a session comes before it", () => {
    expect(pageEvents(history.slice(0, 3), "2026-01-06", ["2026-01-03", "2026-01-01"])).toEqual([
      { kind: "step", afterSession: 1 },
    ]);
  });

  it("only the first session of a page carries what was driven before", () => {
    const digests = [...sessions(2, 0), ...sessions(3, 0, 80, 20)];
    const known = pageHistory(digests.slice(2), digests);
    expect(known.map(({ drivenBefore }) => drivenBefore)).toEqual([
      ["2026-01-01", "2026-01-03"],
      undefined,
      undefined,
    ]);
    expect(pageHistory(digests)[0]).not.toHaveProperty("drivenBefore");
    expect(known.map(({ drivenSince }) => drivenSince)).toEqual([[], [], []]);
  });

  it("a break begins at ten days", () => {
    const last = history.slice(0, 1);
    expect(pageEvents(last, "2026-01-10")).toEqual([]);
    expect(pageEvents(last, "2026-01-11")).toEqual([{ kind: "break", afterSession: 1 }]);
  });
});
