import "fake-indexeddb/auto";

import fc from "fast-check";
import { expect, test } from "vitest";
import { isReached } from "#combo";
import { checkRows, idMaker, type Logbook, pagesOfCombo, restoreAsNew } from "#db";
import { type AllRows, addDays, type CalendarDate, daysBetween, formatLapTime, weekStart } from "#domain";
import { lapsTable } from "#files";
import { askHere } from "#live";
import { type ComboReview, runTimes, seasonBegins } from "#stats";
import { progressTable } from "../../src/charts/progress/progressTable.ts";
import { digestMaker } from "../../src/live/digestMaker.ts";
import { pageBest } from "../../src/live/pageBest.ts";
import { runInShort } from "../../src/screens/log/runs/runInShort.ts";
import { sessionFigures } from "../../src/screens/log/session/sessionFigures.ts";
import { readSession } from "../../src/screens/log/session/useSession.ts";
import { progressOf } from "../../src/screens/review/reviewCharts.ts";
import { randomLogbook, today } from "../support/randomLogbook.ts";

const logbooks = Number(process.env["LAP_LEDGER_LOGBOOKS"] ?? 60);
const seed = Number(process.env["LAP_LEDGER_SEED"] ?? 20261128);

let opened = 0;

async function bookOf(rows: AllRows): Promise<Logbook> {
  const checked = checkRows(rows);
  expect(checked.bad).toEqual([]);
  const clock = () => Date.parse(`${today}T22:00:00Z`);
  opened += 1;
  return restoreAsNew(checked.rows, { name: `one figure ${opened}`, clock, newId: idMaker(clock) });
}

/** What the screens ask, each as it asks it. */
async function screensOf(book: Logbook, rows: AllRows) {
  const across = await askHere(book, "acrossCombos", { today });
  const mondays = mondaysOf(rows);
  const weeks = await Promise.all(
    mondays.map(async (monday) => (await askHere(book, "statement", { monday, today })).statement),
  );
  const combos = await Promise.all(
    rows.combos.map(async ({ id: comboId }) => {
      const review = (from?: CalendarDate, to?: CalendarDate) =>
        askHere(book, "comboReview", {
          comboId,
          period: { ...(from !== undefined && { from }), ...(to !== undefined && { to }) },
          today,
        });
      const [all, season, week] = await Promise.all([
        review(),
        review(seasonBegins(today)),
        review(weekStart(today), addDays(weekStart(today), 6)),
      ]);
      return {
        comboId,
        all,
        season,
        week,
        line: across.find((line) => line.comboId === comboId),
        weekLines: weeks.flatMap(({ lines }) => lines.filter((line) => line.comboId === comboId)),
        pages: await pagesOfCombo(book, comboId),
        bestInForm: await askHere(book, "targetNow", { comboId, kind: "best", today }),
        plan: await askHere(book, "plan", { comboId, today }),
        usualInForm: await askHere(book, "targetNow", { comboId, kind: "median", today }),
      };
    }),
  );
  const sessions = await Promise.all(rows.sessions.map(({ id }) => logPageOf(book, id)));
  return { across, weeks, thisWeek: weeks.at(-1), combos, sessions };
}

type Screens = Awaited<ReturnType<typeof screensOf>>;

/** Mondays of the weeks with a session, and of this one. */
function mondaysOf({ sessions }: AllRows): CalendarDate[] {
  return [...new Set([...sessions.map(({ date }) => date), today].map(weekStart))].sort();
}

/** A session's page as `SessionPage` works it out. */
async function logPageOf(book: Logbook, sessionId: string) {
  const data = await readSession(book, sessionId);
  if (data === null) throw new Error("the session is there");
  const { session, page, preferences } = data;
  const maker = digestMaker(preferences);
  const { comboId, id: except, startedAt } = session;
  const pb = await pageBest(book, { comboId, span: { from: page.from, to: startedAt }, except }, maker);
  const since = { from: startedAt, to: page.to };
  const later = await pageBest(book, { comboId, span: since, except, isAfterBest: true }, maker);
  return { session, page, preferences, pb, figures: sessionFigures(data, pb, later) };
}

const shownOf = (review: ComboReview | undefined) => review && { gain: review.gain };

function gainsAgree({ combos, thisWeek }: Screens) {
  for (const { comboId, season, line } of combos) {
    if (line !== undefined) expect(line.gain).toEqual(season.gain);
    if (thisWeek?.main?.comboId === comboId && line !== undefined)
      expect(shownOf(thisWeek.main.season)).toEqual(shownOf(season));
  }
}

/** What Review says of evenings is what the plan is drafted from, whatever the period. */
function eveningsAgree({ combos }: Screens) {
  for (const { all, week, plan } of combos) {
    expect(plan?.facts).toMatchObject({ overnight: all.overnight, spread: all.spread });
    expect(week).toMatchObject({ overnight: all.overnight, spread: all.spread });
  }
}

function countsAgree({ combos, sessions, weeks }: Screens) {
  for (const { comboId, all, line, weekLines } of combos) {
    const { practice } = all;
    const own = sessions.filter(({ session }) => session.comboId === comboId);
    const logged = own.map(({ figures }) => figures.report);
    const sum = (of: (n: number) => number) => logged.reduce((total, _, n) => total + of(n), 0);
    const inWeeks = (of: (line: (typeof weekLines)[number]) => number) =>
      weekLines.reduce((total, one) => total + of(one), 0);
    const laps = sum((n) => logged[n]?.counts.driven ?? 0);
    const driven = logged.filter(({ counts }) => counts.driven > 0).length;
    expect([practice.laps, inWeeks((one) => one.laps)]).toEqual([laps, laps]);
    expect([practice.sessions, inWeeks((one) => one.sessions)]).toEqual([driven, driven]);
    expect(practice.days.reduce((total, day) => total + day.sessions, 0)).toBe(driven);
    expect(all.sessions + all.sessionsOnOldPages).toBe(driven);
    expect(inWeeks((one) => one.drivingMs)).toBe(practice.drivingMs);
    expect(inWeeks((one) => one.mistakes)).toBe(sum((n) => logged[n]?.mistakes ?? 0));
    expect(all.points.reduce((total, { laps: of }) => total + of, 0)).toBe(laps);
    if (line === undefined) {
      expect(all.sessions).toBe(0);
      continue;
    }
    expect([line.sessions, line.laps, line.drivingMs]).toEqual([
      all.sessions,
      all.counts.driven,
      all.drivingMs,
    ]);
    expect(line.cleanShare).toEqual(all.cleanShare);
    expect(line.mistakesPer100).toBe(
      all.counts.driven === 0 ? undefined : (100 * all.mistakes) / all.counts.driven,
    );
    if (all.sessions > 0) expect(all.daysSinceLast).toBe(daysBetween(line.lastOn, today));
  }
  const ofDays = new Map(weeks.flatMap(({ days }) => days.map(({ date, laps }) => [date, laps] as const)));
  const byDay = new Map<CalendarDate, number>();
  for (const { all } of combos)
    for (const { date, laps } of all.practice.days) byDay.set(date, (byDay.get(date) ?? 0) + laps);
  for (const [date, laps] of ofDays) expect(byDay.get(date) ?? 0).toBe(laps);
}

function sessionsAgree({ combos, sessions }: Screens) {
  for (const { session, page, preferences, figures } of sessions) {
    const combo = combos.find(({ comboId }) => comboId === session.comboId);
    const point = combo?.all.points.find(({ sessionId }) => sessionId === session.id);
    const { report } = figures;
    expect(point).toMatchObject({
      laps: report.counts.driven,
      paceLaps: report.pace.laps,
      mistakes: report.mistakes,
      median: report.pace.median,
      medianDecimals: report.pace.medianDecimals,
    });
    expect(point?.bestClean?.ms).toBe(report.best?.ms);
    expect(point?.bestClean?.decimals).toBe(report.best?.decimals);
    for (const { run, number } of figures.shown.filter((one) => one.run.summary === undefined)) {
      const said = figures.saidOf(number)?.report;
      if (said?.usual.known !== true || said.laps < 2) continue;
      const usual = formatLapTime(said.usual.value, said.usualDecimals);
      expect(runInShort(run, runTimes(run, preferences)).split(" · ")).toContain(`usual ${usual}`);
    }
    expect(point?.consistency?.percent).toBe(
      report.pace.consistency.known ? report.pace.consistency.value.percent : undefined,
    );
    if (combo === undefined || page.to !== Number.POSITIVE_INFINITY) continue;
    for (const { accounts } of [combo.all, combo.season, combo.week]) {
      const own = accounts.find(({ sessionId }) => sessionId === session.id);
      if (own === undefined) continue;
      expect(own.target).toEqual(report.target);
      if (own.account.known || report.account.known)
        expect(whatItSays(own.account)).toEqual(whatItSays(report.account));
    }
  }
}

const whatItSays = (account: ComboReview["account"]) =>
  account.known && [
    account.value.pace,
    account.value.repeatability,
    account.value.mistakes,
    account.value.others,
    account.value.balance,
  ];

function bestsAgree({ combos, sessions, thisWeek }: Screens) {
  for (const { comboId, all, line, bestInForm } of combos) {
    const pb = all.bests.at(-1);
    expect(line?.best).toEqual(line && pb);
    const ofWeek = thisWeek?.lines.find((one) => one.comboId === comboId);
    if (ofWeek !== undefined && line !== undefined) expect(ofWeek.best).toEqual(pb);
    const ofTargets = all.targets.filter(({ target, now }) => target.kind === "best" && now !== undefined);
    for (const { now } of ofTargets) expect([now?.value, now?.decimals]).toEqual([pb?.ms, pb?.decimals]);
    expect(bestInForm?.value).toBe(pb?.ms);
    const onPage = sessions.filter(
      ({ session, page }) => session.comboId === comboId && page.to === Number.POSITIVE_INFINITY,
    );
    for (const one of onPage) {
      const before = all.bests.findLast((step) => step.at < one.session.startedAt);
      expect(one.pb?.ms).toBe(before?.ms);
      const steps = all.bests.filter(({ sessionId }) => sessionId === one.session.id);
      expect(one.figures.report.newBests.map(({ lapId }) => lapId)).toEqual(steps.map(({ lapId }) => lapId));
      const isStanding = pb?.sessionId === one.session.id;
      expect(one.figures.standingId).toBe(isStanding ? pb.lapId : undefined);
    }
  }
}

function usualsAgree({ combos, thisWeek, weeks }: Screens) {
  for (const { comboId, all, line, weekLines, ...combo } of combos) {
    const chart = progressTable(
      progressOf({ review: all, days: {}, today } as Parameters<typeof progressOf>[0]),
    );
    for (const { sessionId, median, medianDecimals } of all.points) {
      const row = chart.rows.find(({ id }) => id === sessionId);
      if (median !== undefined) expect(row?.cells["usual"]?.text).toBe(formatLapTime(median, medianDecimals));
    }
    const last = all.points.findLast(({ isPresentPage, paceLaps }) => isPresentPage && paceLaps >= 5);
    const ofWeek = thisWeek?.lines.find((one) => one.comboId === comboId);
    const isInWeek = last !== undefined && last.date >= weekStart(today);
    if (ofWeek !== undefined && line !== undefined)
      expect(ofWeek.usual).toEqual(
        isInWeek
          ? {
              ms: last.median,
              decimals: last.medianDecimals,
              sessionId: last.sessionId,
              date: last.date,
            }
          : undefined,
      );
    const [, level] = [combo, all.curve.known ? all.curve.value.line.at(-1)?.mid : undefined];
    for (const { target, now } of all.targets.filter(
      (state) => state.now && state.target.kind === "median",
    )) {
      expect(target.kind).toBe("median");
      expect(now).toEqual(combo.usualInForm);
      // The figure is the end of the curve, to hundredths.
      if (level !== undefined) expect(now?.value).toBe(10 * Math.round(level / 10));
    }
  }
  expect(weeks.length).toBeGreaterThan(0);
}

function targetsAgree({ combos, thisWeek }: Screens) {
  for (const { comboId, all, season, line, pages } of combos) {
    expect(season.targets).toEqual(all.targets);
    const open = all.targets.filter(
      ({ standing, target }) => standing.kind === "open" && target.archivedAt === undefined,
    );
    if (line !== undefined) {
      expect(line.nextTarget === undefined).toBe(open.length === 0);
      if (line.nextTarget !== undefined)
        expect(open.map(({ target }) => target.id)).toContain(line.nextTarget.id);
    }
    // A page turned since the last session: the week speaks of the one that was driven on.
    const lastAt = Math.max(...all.points.map(({ startedAt }) => startedAt));
    if (pages.some(({ from }) => from > lastAt)) continue;
    for (const state of thisWeek?.targets.filter(({ target }) => target.comboId === comboId) ?? []) {
      const { isNewlyReached, ...ofWeek } = state;
      expect(ofWeek).toEqual(all.targets.find(({ target }) => target.id === ofWeek.target.id));
      if (isNewlyReached) expect(isReached(ofWeek.standing)).toBe(true);
    }
  }
}

function runNumbersAgree({ sessions }: Screens, rows: AllRows) {
  const [head = [], ...table] = lapsTable(rows);
  const text = (cell: unknown) =>
    typeof cell === "object" && cell !== null && "figures" in cell ? String(cell.figures) : String(cell);
  const inTable = table.map((row) => text(row[head.indexOf("run")]));
  const ordered = sessions.toSorted(
    (a, b) => a.session.startedAt - b.session.startedAt || (a.session.id < b.session.id ? -1 : 1),
  );
  const onLog = ordered.flatMap(({ figures }) =>
    figures.shown.flatMap(({ run, number }) =>
      run.laps.filter(({ deletedAt }) => deletedAt === undefined).map(() => String(number)),
    ),
  );
  expect(inTable.toSorted()).toEqual(onLog.toSorted());
  for (const { figures } of sessions) {
    const numberOf = new Map(
      figures.shown.flatMap(({ run, number }) => run.laps.map(({ id }) => [id, number] as const)),
    );
    for (const { lapId, run } of figures.report.chart.laps) expect(numberOf.get(lapId)).toBe(run);
  }
}

async function searchAgrees(book: Logbook, { sessions }: Screens) {
  const found = await askHere(book, "search", { terms: { from: "2026-01-01" }, most: 1000 });
  const byId = new Map(found.sessions.map((one) => [one.sessionId, one]));
  for (const { session, figures } of sessions)
    expect(byId.get(session.id)?.laps).toBe(figures.report.counts.driven);
  const laps = await askHere(book, "search", { terms: { shortest: 1 }, most: 10_000 });
  const numbers = new Map(
    sessions.flatMap(({ figures }) =>
      figures.shown.flatMap(({ run, number }) => run.laps.map(({ id }) => [id, number] as const)),
    ),
  );
  for (const { lapId, runNumber } of laps.laps) expect(runNumber).toBe(numbers.get(lapId));
}

test("a figure that two screens show is the same number, whatever is in the logbook", {
  timeout: 600_000,
}, async () => {
  await fc.assert(
    fc.asyncProperty(randomLogbook, async (rows) => {
      const book = await bookOf(rows);
      const screens = await screensOf(book, rows);
      gainsAgree(screens);
      eveningsAgree(screens);
      countsAgree(screens);
      sessionsAgree(screens);
      bestsAgree(screens);
      usualsAgree(screens);
      targetsAgree(screens);
      runNumbersAgree(screens, rows);
      await searchAgrees(book, screens);
      book.close();
    }),
    { numRuns: logbooks, seed, endOnFailure: true },
  );
});
