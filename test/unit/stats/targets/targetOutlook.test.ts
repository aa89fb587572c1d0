import { describe, expect, it } from "vitest";
import { addDays, type CalendarDate } from "#domain";
import { type OutlookInput, type SessionDigest, suggestedTargets, targetOutlook } from "#stats";
import { sessionsAhead } from "../../../../src/stats/targets/sessionsAhead.ts";
import { aDigest, lapsAbout } from "../period/manySessions.ts";

/** A session every third day from 1 January 2026; the usual lap falls towards 1:24 by half each six sessions. */
function improving(count: number): SessionDigest[] {
  return Array.from({ length: count }, (_, number) =>
    aDigest(3 * number, lapsAbout(84_000 + 2000 * 2 ** (-number / 6), 20, number)),
  );
}
const flat = (count: number) =>
  Array.from({ length: count }, (_, number) => aDigest(3 * number, lapsAbout(84_000, 20, number)));

const dayAfter = (page: readonly SessionDigest[]) => addDays(page.at(-1)?.date ?? "2026-01-01", 1);
function ask(page: readonly SessionDigest[], input: Partial<OutlookInput> = {}) {
  const today = dayAfter(page);
  return targetOutlook({
    comboId: "c",
    page,
    today,
    kind: "best",
    value: 83_500,
    by: addDays(today, 28),
    ...input,
  });
}
function outlookOf(...asked: Parameters<typeof ask>) {
  const outlook = ask(...asked);
  if (!outlook.known) throw new Error(JSON.stringify(outlook.reason));
  return outlook.value;
}
function suggest(page: readonly SessionDigest[], kind: "best" | "median", by: CalendarDate) {
  const suggested = suggestedTargets({ comboId: "c", page, today: dayAfter(page), kind, by });
  if (!suggested.known) throw new Error(JSON.stringify(suggested.reason));
  return suggested.value;
}

describe("days of the sessions to come", () => {
  it("lie in the middle of their share of the time", () => {
    expect(sessionsAhead(2, "2026-11-02", 7)).toEqual(["2026-11-04", "2026-11-07"]);
    expect(sessionsAhead(1 / 6, "2026-11-02", 14)).toEqual([]);
    expect(sessionsAhead(7, "2026-11-02", 3)).toEqual(["2026-11-03", "2026-11-04", "2026-11-05"]);
  });
});

describe("the outlook of a target", () => {
  it("says exactly what is missing", () => {
    expect(ask(improving(2))).toEqual({
      known: false,
      reason: { needs: 3, of: "session", each: { needs: 5, of: "pace lap" }, has: 2 },
    });
    const rested = ask(improving(5), { today: "2026-06-01", by: "2026-07-01" });
    expect(rested).toEqual({ known: false, reason: { because: "nothing driven lately" } });
    const done = ask(improving(12), { value: 90_000 });
    expect(done).toEqual({ known: false, reason: { because: "already reached" } });
  });

  it("is the same at every asking, and names the sessions it counts on", () => {
    const outlook = outlookOf(improving(12));
    expect(outlookOf(improving(12))).toEqual(outlook);
    // Twelve sessions in the five weeks since the first are 2.4 a week, ten in four weeks.
    expect(outlook).toMatchObject({ sessions: 12, isMostlyAssumption: false, byDate: { sessions: 10 } });
    expect(outlook.rate).toMatchObject({ sessionsAWeek: 2.4, lapsASession: 20 });
  });

  it("a later date or an easier target never lowers the chance", () => {
    const page = improving(12);
    const today = dayAfter(page);
    const chance = (input: Partial<OutlookInput>) => outlookOf(page, input).byDate?.chance ?? Number.NaN;
    const byDay = [3, 10, 28, 90].map((days) => chance({ by: addDays(today, days) }));
    const byValue = [83_000, 83_400, 83_700, 83_900].map((value) => chance({ value }));
    expect(byDay).toEqual(byDay.toSorted((a, b) => a - b));
    expect(byValue).toEqual(byValue.toSorted((a, b) => a - b));
    expect(byDay.at(-1)).toBeGreaterThan(byDay[0] ?? 1);
  });

  it("the likely day agrees with the chance by the date", () => {
    const page = improving(12);
    const days = [2, 9, 20, 40, 80].map((more) => addDays(dayAfter(page), more));
    for (const by of days)
      for (const value of [83_200, 83_500, 83_800]) {
        const { byDate, expected } = outlookOf(page, { by, value });
        const isHalfway = expected.mid !== undefined && expected.mid <= by;
        expect(isHalfway).toBe(Math.round((byDate?.chance ?? 0) * 20) >= 10);
      }
  });

  it("counts on one session though the rate brings none before the date", () => {
    const page = improving(5);
    const { byDate } = outlookOf(page, { today: "2026-02-20", by: "2026-02-21" });
    expect(byDate?.sessions).toBe(1);
  });

  it("gives no chance without a date within a year, but the likely days", () => {
    const page = improving(12);
    expect(outlookOf(page, { by: undefined }).byDate).toBeUndefined();
    expect(outlookOf(page, { by: "2031-01-01" }).byDate).toBeUndefined();
    expect(outlookOf(page, { by: undefined }).expected.low).toBeDefined();
  });

  it("has a chance for today and for a day in a year, and none for a day gone by or later", () => {
    const page = improving(4);
    const today = dayAfter(page);
    const byDate = (days: number) => outlookOf(page, { by: addDays(today, days) }).byDate;
    expect(byDate(0)?.sessions).toBe(1);
    expect(byDate(365)).toBeDefined();
    expect(byDate(366)).toBeUndefined();
    expect(byDate(-1)).toBeUndefined();
  });

  it("has its likely days among those of the sessions to come", () => {
    const page = improving(12);
    const { expected, chanceWithinYear, byDate } = outlookOf(page, { value: 83_450 });
    // 2.4 sessions a week from 4 February on: the first day is the 5th.
    expect(outlookOf(page, { by: undefined, value: 84_000 - 1 }).expected.low).toBe("2026-02-05");
    expect(chanceWithinYear).toBeGreaterThanOrEqual(byDate?.chance ?? 1);
    const days = [expected.low, expected.mid, expected.high].filter((day) => day !== undefined);
    expect(days.toSorted()).toEqual(days);
    expect(outlookOf(page, { value: 70_000 }).expected).toEqual({
      low: undefined,
      mid: undefined,
      high: undefined,
    });
  });

  it("a best lap driven just at the target by one session is reached", () => {
    const page = improving(5);
    const best = Math.min(...page.map(({ pace }) => pace.best ?? Number.POSITIVE_INFINITY));
    expect(ask(page, { value: best })).toEqual({ known: false, reason: { because: "already reached" } });
    expect(ask(page, { value: best - 1 }).known).toBe(true);
  });

  it("of a usual lap begins its milestones at the level, and has no chance where that is there", () => {
    const page = improving(12);
    const { milestones } = outlookOf(page, { kind: "median", value: 83_000 });
    expect(milestones.at(-1)?.ms).toBe(83_000);
    expect(milestones[0]?.ms).toBeLessThan(84_800);
    const there = { known: false, reason: { because: "level there already" } };
    expect(ask(page, { kind: "median", value: 86_000 })).toEqual(there);
    const driven = { known: false, reason: { because: "already reached" } };
    expect(ask(page, { kind: "meanOf", laps: 3, value: 86_000 })).toEqual(driven);
    // 120 ms are too little for three steps of 50.
    const pb = Math.min(...page.flatMap(({ bestCandidates }) => bestCandidates.map(({ ms }) => ms)));
    expect(outlookOf(page, { value: pb - 149 }).milestones).toHaveLength(2);
  });

  it("has milestones that fall from the PB to the target", () => {
    const page = improving(12);
    const { milestones } = outlookOf(page, { value: 83_000 });
    const pb = Math.min(...page.flatMap(({ bestCandidates }) => bestCandidates.map(({ ms }) => ms)));
    const times = milestones.map(({ ms }) => ms);
    expect(times.at(-1)).toBe(83_000);
    expect(times.toSorted((a, b) => b - a)).toEqual(times);
    expect(times[0]).toBeLessThan(pb);
    expect(milestones).toHaveLength(4);
    // A tenth is too little for four steps.
    expect(outlookOf(page, { value: pb - 100 }).milestones).toHaveLength(2);
    expect(outlookOf(page, { value: pb - 20 }).milestones).toMatchObject([{ ms: pb - 20 }]);
  });

  it("dates each step by the day half of the futures are there, the last by the likely day itself", () => {
    const { milestones, expected } = outlookOf(improving(12), { value: 83_450 });
    const days = milestones.map(({ by }) => by);
    expect(days).not.toContain(undefined);
    expect(days.toSorted()).toEqual(days);
    expect(days.at(-1)).toBe(expected.mid);
    expect(days[0]).not.toBe(expected.mid);
  });

  it("names twenty equally likely days, of which as many have come by the date as its chance says", () => {
    const page = improving(12);
    for (const value of [82_900, 83_300, 83_600])
      for (const days of [2, 9, 20, 60]) {
        const by = addDays(dayAfter(page), days);
        const { likelyDays, byDate, expected } = outlookOf(page, { value, by });
        expect(likelyDays).toHaveLength(20);
        const known = likelyDays.filter((day) => day !== undefined);
        expect(known.toSorted()).toEqual(known);
        expect(likelyDays.slice(known.length).every((day) => day === undefined)).toBe(true);
        expect(known.filter((day) => day <= by)).toHaveLength(Math.round((byDate?.chance ?? 0) * 20));
        // One day for one chance: what is told in words, on the line and by the date never differ.
        const told = Math.round((byDate?.chance ?? 0) * 20);
        for (const [count, day] of [
          [2, expected.low],
          [10, expected.mid],
          [18, expected.high],
        ] as const)
          expect(day !== undefined && day <= by).toBe(told >= count);
      }
  });
});

describe("suggested targets", () => {
  it.each(["best", "median"] as const)("a %s target as suggested is forecast just as it was said", (kind) => {
    const page = improving(12);
    const by = addDays(dayAfter(page), 28);
    const { fair, stretch, sessions } = suggest(page, kind, by);
    if (fair === undefined || stretch === undefined) throw new Error("an improving driver gets both");
    expect(sessions).toBe(10);
    expect(stretch.ms).toBeLessThan(fair.ms);
    for (const [{ ms, chance }, wanted] of [
      [fair, 0.5],
      [stretch, 0.2],
    ] as const) {
      expect(ms % 10).toBe(0);
      expect(outlookOf(page, { kind, value: ms, by }).byDate?.chance).toBe(chance);
      expect(Math.abs(chance - wanted)).toBeLessThan(0.05);
    }
  });

  it("are left out where they have been driven already", () => {
    const page = flat(12);
    const pb = Math.min(...page.flatMap(({ bestCandidates }) => bestCandidates.map(({ ms }) => ms)));
    const { fair, stretch } = suggest(page, "best", addDays(dayAfter(page), 3));
    expect(fair).toBeUndefined();
    if (stretch !== undefined) expect(stretch.ms).toBeLessThan(pb);
  });

  it("give the reason for a date too far away or too few sessions", () => {
    const at = { comboId: "c", today: "2026-02-10", kind: "best" } as const;
    const page = improving(4);
    const today = dayAfter(page);
    const asked = (by: CalendarDate) => suggestedTargets({ ...at, page, today, by });
    expect(asked(addDays(today, 366))).toEqual({
      known: false,
      reason: { because: "more than a year away" },
    });
    expect(asked(addDays(today, 365)).known).toBe(true);
    expect(suggestedTargets({ ...at, page: improving(2), by: "2026-03-01" })).toMatchObject({
      reason: { needs: 3, of: "session", each: { needs: 5, of: "pace lap" }, has: 2 },
    });
  });
});

describe("what a driver saw", () => {
  it("“a session has come there already, so no chance”: a usual lap that one evening reached still has its chance", () => {
    const evening = aDigest(36, lapsAbout(83_000, 20, 99));
    const page = [...flat(12), evening, ...[13, 14, 15].map((n) => aDigest(3 * n, lapsAbout(84_000, 20, n)))];
    const outlook = outlookOf(page, { kind: "median", value: 83_200 });
    expect(outlook.byDate?.chance).toBeGreaterThanOrEqual(0);
    expect(outlook.byDate?.chance).toBeLessThan(0.5);
  });

  it("what is suggested is never what is asked about as out of reach", () => {
    for (const page of [improving(12), flat(12)])
      for (const kind of ["best", "median"] as const) {
        const { fair, stretch, hardest } = suggest(page, kind, addDays(dayAfter(page), 28));
        for (const one of [fair, stretch]) expect(one?.ms ?? hardest).toBeGreaterThanOrEqual(hardest);
        expect(hardest).toBeGreaterThan(60_000);
      }
  });
});
