import { describe, expect, it } from "vitest";
import { curveOutlook, practiceAmount, practiceRate } from "#stats";
import { pageHistory } from "../../../../src/stats/period/pageHistory.ts";
import type { Told } from "../someRows.ts";
import { aDigest, lapsAbout } from "./manySessions.ts";

// Day 0 is 1 January 2026.
const digests = [0, 10, 20, 30, 34, 38].map((day, at) => aDigest(day, lapsAbout(84_000 - 100 * at, 12, day)));

describe("the rate of practice", () => {
  it("is that of the last six weeks", () => {
    expect(practiceRate(digests, "2026-02-12")).toEqual({
      sessionsAWeek: 5 / 6,
      lapsASession: 12,
      sessions: 5,
    });
    expect(practiceRate(digests, "2026-06-01")).toBeUndefined();
  });

  it("counts neither a session after today nor one without a timed lap", () => {
    const more = [...digests, aDigest(39, [[undefined, "off"]])];
    expect(practiceRate(more, "2026-02-12")?.sessions).toBe(5);
    expect(practiceRate(digests, "2026-01-31")?.sessions).toBe(4);
  });
});

describe("the amount of practice", () => {
  it("adds laps and hours by day, guests' laps left out", () => {
    const twice = [
      aDigest(0, [80_000, 80_000], {}, { endedAt: Date.UTC(2026, 0, 1, 21) }),
      aDigest(0, [80_000]),
      aDigest(3, [80_000], { guest: "Ada" }),
    ];
    expect(practiceAmount(twice)).toEqual({
      sessions: 2,
      laps: 3,
      drivingMs: 240_000,
      sittingMs: 3_600_000,
      sittingsKnown: 1,
      days: [{ date: "2026-01-01", laps: 3, sessions: 2 }],
    });
  });

  it("has its days in order, and no session that was emptied", () => {
    const found = practiceAmount([
      aDigest(5, [80_000]),
      aDigest(2, []),
      aDigest(0, [80_000]),
      aDigest(3, [81_000]),
    ]);
    expect(found.days.map(({ date }) => date)).toEqual(["2026-01-01", "2026-01-04", "2026-01-06"]);
    expect(found).toMatchObject({ sessions: 3, laps: 3, drivingMs: 241_000, sittingMs: 0, sittingsKnown: 0 });
  });

  it("does not take a session entered afterwards for a sitting of no length", () => {
    const at = Date.UTC(2026, 0, 1, 20);
    expect(practiceAmount([aDigest(0, [80_000], {}, { endedAt: at })]).sittingsKnown).toBe(0);
  });

  it("shows no start to end of an imported session, which is shorter than the time at its wheel", () => {
    const imported: Told[] = [
      { ms: 80_000, source: "imported" },
      { ms: 82_000, source: "imported" },
    ];
    const at = Date.UTC(2026, 0, 1, 20);
    const end = (endedAt: number, laps: readonly Told[]) =>
      practiceAmount([aDigest(0, laps, {}, { endedAt })]).sittingsKnown;
    expect(end(at + 162_000, imported)).toBe(0);
    expect(end(at + 3_600_000, imported)).toBe(0);
    expect(end(at + 3_600_000, [...imported, 81_000])).toBe(1);
    expect(end(at + 162_000, [80_000, 82_000])).toBe(0);
    expect(end(at + 162_001, [80_000, 82_000])).toBe(1);
  });

  it("does not count ten years at the wheel for an evening that ended under a clock ahead", () => {
    const right = aDigest(0, [80_000], {}, { endedAt: Date.UTC(2026, 0, 1, 21) });
    const ahead = aDigest(1, [80_000], {}, { endedAt: Date.UTC(2036, 2, 4, 21) });
    const found = practiceAmount([right, ahead]);
    expect([found.sittingMs, found.sittingsKnown]).toEqual([3_600_000, 1]);
  });

  it("counts a sitting of a day and a night, and none longer", () => {
    const until = (endedAt: number) => practiceAmount([aDigest(0, [80_000], {}, { endedAt })]).sittingsKnown;
    expect(until(Date.UTC(2026, 0, 2, 20))).toBe(1);
    expect(until(Date.UTC(2026, 0, 2, 20) + 1)).toBe(0);
  });
});

describe("the level on the calendar", () => {
  const history = pageHistory(digests);
  const today = "2026-02-12";
  const ask = (comboId: string) =>
    curveOutlook({ comboId, history, rate: practiceRate(digests, today), today });

  it("gives the same picture for the same laps, and a combo's own seed", () => {
    expect(ask("a")).toEqual(ask("a"));
    expect(ask("a")).not.toEqual(ask("b"));
  });

  it("looks six weeks ahead at the present rate, bands inside each other", () => {
    const curve = ask("a");
    if (!curve.known) throw new Error(JSON.stringify(curve.reason));
    const { ahead, line } = curve.value;
    expect(ahead).toHaveLength(5);
    expect(ahead.at(-1)?.date).toBe("2026-03-26");
    expect(line.map(({ date }) => date)).toEqual(history.map(({ date }) => date));
    for (const { low, lowHalf, mid, highHalf, high } of [...ahead, ...line])
      expect([low, lowHalf, mid, highHalf, high]).toEqual(
        [low, lowHalf, mid, highHalf, high].toSorted((a, b) => a - b),
      );
  });

  it("has two sessions ahead at least, and thirty at most", () => {
    const aheadAt = (sessionsAWeek: number) => {
      const rate = { sessionsAWeek, lapsASession: 12, sessions: 1 };
      const curve = curveOutlook({ comboId: "a", history: history.slice(0, 3), rate, today });
      return curve.known ? curve.value.ahead.map(({ date }) => date) : [];
    };
    expect(aheadAt(1 / 6)).toEqual(["2026-03-05", "2026-03-26"]);
    expect(aheadAt(0.5)).toEqual(["2026-02-26", "2026-03-12", "2026-03-26"]);
    const many = aheadAt(14);
    expect(many).toHaveLength(30);
    expect([many[0], many.at(-1)]).toEqual(["2026-02-13", "2026-03-26"]);
  });

  it("knows a break that goes on today", () => {
    const at = (day: string) =>
      curveOutlook({ comboId: "a", history, rate: practiceRate(digests, today), today: day });
    const [soon, late] = [at("2026-02-12"), at("2026-03-01")];
    if (!soon.known || !late.known) throw new Error("both are known");
    expect(late.value.ahead[0]?.mid).toBeGreaterThan(soon.value.ahead[0]?.mid ?? Number.NaN);
    expect(soon.value.line.map(({ sessionId }) => sessionId)).toEqual(
      history.map(({ sessionId }) => sessionId),
    );
  });

  it("forecasts nothing where nothing was driven lately, and needs two sessions", () => {
    const later = curveOutlook({ comboId: "a", history, rate: undefined, today: "2026-06-01" });
    expect(later).toMatchObject({ known: true, value: { ahead: [] } });
    expect(curveOutlook({ comboId: "a", history: history.slice(0, 1), rate: undefined, today })).toEqual({
      known: false,
      reason: { needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 1 },
    });
  });

  it("rests on the last 250 sessions at most and says how many it leaves out", () => {
    const many = Array.from({ length: 260 }, (_, at) => ({
      ...history[0],
      lapsBefore: 12 * at,
      date: "2026-01-01",
    }));
    const curve = curveOutlook({ comboId: "a", history: many as typeof history, rate: undefined, today });
    expect(curve).toMatchObject({ known: true, value: { sessions: 250, sessionsLeftOut: 10 } });
  });
});
