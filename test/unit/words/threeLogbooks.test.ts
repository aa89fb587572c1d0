import { describe, expect, test } from "vitest";
import { isReached } from "#combo";
import { addDays, type CalendarDate, type Run, type Target, weekStart } from "#domain";
import { acrossCombos, comboReview, seasonBegins, sessionDigest, targetOutlook, weekStatement } from "#stats";
import {
  accountTitle,
  certaintyOf,
  gainInShort,
  gainTitle,
  practiceTitle,
  progressReading,
  progressTitle,
  sayProgress,
  sayStanding,
  sayStandingInShort,
  sayTargetChance,
  sayTargetDates,
  steadinessReading,
  steadinessTitle,
  weekFinding,
  weekNext,
} from "#words";
import { aPage, aRun, aSession, choices, type Told } from "../stats/someRows.ts";
import { expectWellFormed } from "./wellFormed.ts";

/** Day 97 from 1 January 2026: a Wednesday in April, so that the week is not over. */
const lastDay = 97;
const today: CalendarDate = addDays("2026-01-01", lastDay);
const on = { asOf: today, today };
const evenings = 26;
const noise = [260, -120, 40, 510, -60, 180, -210, 90, 330, 0];

/** The day of an evening, and how the level stands on it above where it began, ms. */
const dayOf = (evening: number) => lastDay - 3 * (evenings - 1 - evening);

/**
 * Twenty-six evenings, every third day: two pace runs of eight laps; every fifth a wet run beside them, every fourth in
 * tenths, one emptied, a new page after the sixth.
 */
function logbook(levelOf: (evening: number) => number) {
  const digests = Array.from({ length: evenings }, (_, evening) => {
    const day = dayOf(evening);
    const session = aSession(day);
    const level = 90_000 + levelOf(evening) + ((evening * 37) % 11) * 18;
    const lap = (n: number): Told => {
      const ms = level + (noise[(n * 7 + evening * 3) % noise.length] ?? 0);
      return evening % 4 === 3 ? { ms: 100 * Math.floor(ms / 100), decimals: 1 } : ms;
    };
    const run = (n: number, fields: Partial<Run> = {}) =>
      aRun(
        n,
        Array.from({ length: 8 }, (_, place) => lap(8 * n + place)),
        { sessionId: session.id, startedAt: session.startedAt, ...fields },
      );
    const off = aRun(4, [[level + 9000, "off"], level + 300], { sessionId: session.id });
    const wet = evening % 5 === 4 ? [run(3, { surface: "wet" })] : [];
    const runs = evening === 12 ? [] : [run(1), run(2), ...wet, ...(evening % 3 === 0 ? [off] : [])];
    return sessionDigest(session, runs, choices);
  });
  const pages = [aPage(Date.parse(addDays("2026-01-01", dayOf(6))))];
  return { comboId: "combo", digests, pages };
}

const aTarget = (id: string, fields: Partial<Target>): Target => {
  const setOn = addDays(today, -40);
  const setAt = Date.parse(setOn);
  return {
    id,
    createdAt: setAt,
    updatedAt: setAt,
    comboId: "combo",
    kind: "best",
    value: 89_000,
    setAt,
    setOn,
    start: 90_500,
    ...fields,
  };
};

const targets: readonly Target[] = [
  aTarget("easy", { kind: "median", value: 90_300, by: addDays(today, 20) }),
  aTarget("hard", { kind: "median", value: 87_600, by: addDays(today, 20) }),
  aTarget("this week", { value: 88_700, by: addDays(today, 1) }),
  aTarget("missed", { value: 86_000, by: addDays(today, -5) }),
  aTarget("missed this week", { value: 85_500, by: addDays(today, -1) }),
  aTarget("old page", { value: 89_900, setAt: 0, setOn: "2026-01-01" }),
  aTarget("scatter", { kind: "scatter", value: 250, start: 400 }),
];

/** All that Review, the week, All combos and Targets say of it. */
function said(levelOf: (evening: number) => number) {
  const combo = { ...logbook(levelOf), targets, references: [] };
  const review = (from?: CalendarDate) =>
    comboReview({ ...combo, period: { from }, today, preferences: choices });
  const [season, all] = [review(seasonBegins(today)), review()];
  const [line] = acrossCombos([combo], today);
  const week = weekStatement({ monday: weekStart(today), today, combos: [combo], preferences: choices });
  const page = combo.digests.filter(({ startedAt }) => startedAt >= (combo.pages[0]?.from ?? 0));
  const outlooks = all.targets.flatMap(({ target, standing }) => {
    const { comboId, kind, value, by } = target;
    if (standing.kind !== "open" || (kind !== "best" && kind !== "median")) return [];
    return [{ by, outlook: targetOutlook({ comboId, page, today, kind, value, by }) }];
  });
  if (line === undefined || week.main === undefined) throw new Error("the combo was driven this week");
  return { season, all, line, week, main: week.main, outlooks };
}

const improving = (evening: number) => 1800 * 0.5 ** (evening / 9) - 1500;
const shapes = [
  ["improving", improving, "very likely", -1],
  ["flat", () => 0, "may be chance", 0],
  ["getting slower", (evening: number) => 70 * evening - 700, "very likely", 1],
] as const;

describe.each(shapes)("a logbook that is %s", (_, levelOf, certainty, sign) => {
  const { season, all, line, week, main, outlooks } = said(levelOf);
  const { gain } = season;

  test("says how much faster once, with one sign and one certainty everywhere", () => {
    for (const other of [line.gain, main.season.gain]) expect(other).toEqual(gain);
    if (!gain.known) throw new Error(JSON.stringify(gain.reason));
    expect(certaintyOf(gain.value.chanceFaster)).toBe(certainty);
    if (sign !== 0) expect(Math.sign(gain.value.change)).toBe(sign);
    expect(progressTitle(main.season, on)).toBe(progressTitle(season, on));
    const words = sign < 0 ? /faster by/ : sign > 0 ? /slower by/ : /not clearly faster or slower/;
    expect(gainTitle(gain, on)).toMatch(words);
    const { figure, certainty: short, way } = gainInShort(gain);
    expect(short).toMatch(new RegExp(`^${certainty}`));
    expect(way).toBe(sign < 0 ? "faster" : sign > 0 ? "slower" : "neither");
    if (sign !== 0) expect(figure).toMatch(sign < 0 ? /^−/ : /^\+/);
  });

  test("does not call a level still that it calls moving again, nor one that very likely rises", () => {
    if (!season.curve.known) throw new Error("there is a curve");
    const { isLevel } = season.curve.value;
    if (sign > 0) expect(isLevel).toBe(false);
    expect(/No longer moving since/.test(progressReading(season)) && !isLevel).toBe(false);
    expect(/Moving again since/.test(progressReading(season)) && isLevel).toBe(false);
  });

  test("calls no target reached in one place and still to come in another", () => {
    for (const state of all.targets) {
      const inWeek = week.targets.find(({ target }) => target.id === state.target.id);
      if (inWeek !== undefined) expect(inWeek.standing).toEqual(state.standing);
      const texts = [
        sayStanding(state),
        sayProgress(state),
        ...(inWeek === undefined ? [] : [sayStandingInShort(inWeek, inWeek.isNewlyReached)]),
      ];
      const isThere = isReached(state.standing);
      if (!isThere && state.standing.kind === "open")
        expect(texts.filter((text) => /^reached/i.test(text))).toEqual([]);
      if (isThere) expect(texts.filter((text) => /missed|days? left|to be reached/i.test(text))).toEqual([]);
      if (isThere) expect(line.nextTarget?.id).not.toBe(state.target.id);
    }
    const standing = (id: string) => all.targets.find(({ target }) => target.id === id)?.standing.kind;
    expect([standing("missed"), standing("missed this week"), standing("old page")]).toEqual([
      "missed",
      "missed",
      "older page",
    ]);
    if (sign !== 0) expect(/^reached/.test(standing("easy") ?? "")).toBe(sign < 0);
    const shown = week.targets.find(({ target }) => target.id === "missed this week");
    expect(shown && sayStandingInShort(shown, shown.isNewlyReached)).toBe("missed");
  });

  test("counts the sessions and laps driven once, and not the evening that was emptied", () => {
    expect(all.practice.sessions).toBe(evenings - 1);
    expect([line.sessions, line.laps]).toEqual([all.sessions, all.counts.driven]);
    expect(all.sessions + all.sessionsOnOldPages).toBe(evenings - 1);
  });

  test("has no sentence with a hole in it", () => {
    const finding = weekFinding(week, today);
    const next = weekNext(week);
    const sentences = [
      ...[season, all, main.week, main.season].flatMap((review) => [
        progressTitle(review, on),
        progressReading(review),
        accountTitle(review),
        steadinessTitle(review),
        steadinessReading(review),
        practiceTitle(review.practice),
      ]),
      ...all.targets.flatMap((state) => [sayStanding(state), sayProgress(state)]),
      ...outlooks.flatMap(({ by, outlook }) => {
        if (!outlook.known) return [];
        const { byDate } = outlook.value;
        return [
          sayTargetDates(outlook.value, today),
          ...(by && byDate ? [sayTargetChance(byDate.chance, by)] : []),
        ];
      }),
      ...(finding === undefined ? [] : [finding.title, finding.reading]),
      ...(next === undefined ? [] : [next.suggestion, next.reason]),
    ].filter((sentence) => sentence !== "");
    expect(sentences.length).toBeGreaterThan(20);
    for (const sentence of sentences) {
      expectWellFormed(sentence);
      const [, needs, has] = /needs (\d+) .*?, has (\d+)/.exec(sentence) ?? [];
      const [, of, wanted] = /: (\d+) of (\d+)$/.exec(sentence) ?? [];
      if (needs !== undefined) expect(Number(needs)).toBeGreaterThan(Number(has));
      if (wanted !== undefined) expect(Number(wanted)).toBeGreaterThan(Number(of));
    }
  });
});
