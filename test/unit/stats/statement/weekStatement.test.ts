import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isReached } from "#combo";
import type { Target } from "#domain";
import { type SessionDigest, sessionDigest, type WeekCombo, weekStatement } from "#stats";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

// 2026-01-05, day 4 of these rows, is a Monday.
const monday = "2026-01-05";
const digest = (day: number, laps: readonly Told[], id = `session ${day}`): SessionDigest =>
  sessionDigest(aSession(day, { id }), [aRun(1, laps, { sessionId: id })], choices);
const about = (ms: number) => [0, 200, -100, 100, -200, 50].map((off) => ms + off);
const combo = (comboId: string, digests: SessionDigest[], more: Partial<WeekCombo> = {}): WeekCombo => ({
  comboId,
  digests,
  pages: [],
  targets: [],
  references: [],
  ...more,
});
const nothing = {
  ...{ sessions: 0, laps: 0, guestLaps: 0, drivingMs: 0, mistakes: 0 },
  ...{ clean: 0, timed: 0, days: [0, 0, 0, 0, 0, 0, 0] },
};
const state = (...combos: WeekCombo[]) =>
  weekStatement({ monday, combos, preferences: choices, today: "2026-01-31" });
const target = (fields: Partial<Target>): Target => ({
  id: "t",
  createdAt: 0,
  updatedAt: 0,
  comboId: "a",
  kind: "best",
  value: 84_000,
  by: "2026-03-01",
  setAt: 0,
  setOn: "2026-01-01",
  ...fields,
});

describe("the statement of a week", () => {
  it("counts Monday to Sunday and nothing beside them", () => {
    const digests = [3, 4, 10, 11].map((day) => digest(day, about(85_000 - day)));
    const { lines, total, days } = state(combo("a", digests));
    expect(lines).toMatchObject([{ comboId: "a", sessions: 2, laps: 12 }]);
    expect(total).toMatchObject({ sessions: 2, laps: 12, mistakes: 0 });
    expect(days.map(({ laps }) => laps)).toEqual([6, 0, 0, 0, 0, 0, 6]);
    expect(days[6]?.date).toBe("2026-01-11");
  });

  it("brings PB and usual lap forward from the last session before it, and later sessions change nothing", () => {
    const digests = [digest(0, about(86_000)), digest(5, about(85_000)), digest(12, about(80_000))];
    const [line] = state(combo("a", digests)).lines;
    expect(line?.bestBefore?.ms).toBe(85_800);
    expect(line?.best?.ms).toBe(84_800);
    expect([line?.usualBefore?.ms, line?.usual?.ms]).toEqual([86_025, 85_025]);
  });

  it("calls usual what the list of sessions calls so, its first laps among them", () => {
    const warmingUp = [90_000, 89_000, 88_000, ...about(85_000), ...about(85_100)];
    const digests = [
      digest(0, warmingUp),
      digest(
        5,
        warmingUp.map((ms) => ms - 500),
      ),
    ];
    const [line] = state(combo("a", digests)).lines;
    expect([line?.usualBefore?.ms, line?.usual?.ms]).toEqual(digests.map(({ pace }) => pace.median));
    expect(line?.usual?.ms).not.toBe(digests[1]?.pace.medianForTrend);
  });

  it("says to how many decimals a usual lap is known: of laps typed in tenths to tenths", () => {
    const inTenths = about(85_000).map((ms) => ({ ms, decimals: 1 }));
    const [line] = state(combo("a", [digest(0, about(86_000)), digest(5, inTenths)])).lines;
    expect([line?.usualBefore?.decimals, line?.usual?.decimals]).toEqual([3, 1]);
  });

  it("a page turned in the week begins afresh, but its laps are still counted", () => {
    const digests = [digest(0, about(80_000)), digest(4, about(80_500)), digest(6, about(85_000))];
    const from = Date.UTC(2026, 0, 6);
    const page = { id: "p", createdAt: 0, updatedAt: 0, comboId: "a", from, reason: "physics" };
    const { lines, main } = state(combo("a", digests, { pages: [page] }));
    expect(lines[0]).toMatchObject({ laps: 12, bestBefore: undefined, usualBefore: undefined });
    expect(lines[0]?.best?.ms).toBe(84_800);
    expect(main?.week.sessions).toBe(1);
  });

  it("takes the combo with most laps for its finding, and names the largest loss of the week", () => {
    const slow: Told[] = [...about(85_000), [99_000, "off"], [99_000, "spin"]];
    const { main, lines } = state(
      combo("a", [digest(4, about(60_000), "a1")]),
      combo("b", [digest(0, about(85_000), "b0"), digest(5, slow, "b1")]),
    );
    expect(lines.map(({ comboId }) => comboId)).toEqual(["b", "a"]);
    expect(main).toMatchObject({ comboId: "b", workOn: { line: "mistakes", sector: undefined } });
    expect(main?.season.sessions).toBe(2);
  });

  it("a week without a lap has no lines and no finding, and its sums are nothing", () => {
    const { lines, main, total } = state(combo("a", [digest(0, about(85_000))]));
    expect([lines, main]).toEqual([[], undefined]);
    expect(total).toEqual({ ...nothing, guestLaps: 0 });
  });

  it("tells targets reached in the week from those reached before and those still open", () => {
    const digests = [digest(0, about(85_000)), digest(5, about(84_100))];
    const targets = [
      target({ id: "newly", value: 83_900, by: "2026-01-20" }),
      target({ id: "before", value: 84_800, by: "2026-01-21" }),
      target({ id: "open", value: 83_000, by: "2026-01-10" }),
      target({ id: "past", by: "2026-01-04" }),
      target({ id: "set later", setOn: "2026-01-12" }),
      target({ id: "archived", archivedAt: 5 }),
    ];
    const found = state(combo("a", digests, { targets })).targets;
    expect(
      found.map(({ target: { id }, standing, isNewlyReached }) => [id, isReached(standing), isNewlyReached]),
    ).toEqual([
      ["open", false, false],
      ["newly", true, true],
      ["before", true, false],
    ]);
  });

  it("shows a combo that only a guest drove, with no session and no laps of the driver's own", () => {
    const guest = sessionDigest(
      aSession(5, { id: "g" }),
      [aRun(1, [85_000, 85_100], { guest: "Ida" })],
      choices,
    );
    const { lines, total, main } = state(combo("a", [guest]), combo("empty", [digest(5, [], "e")]));
    expect(lines).toMatchObject([{ comboId: "a", sessions: 0, laps: 0, guestLaps: 2, drivingMs: 0 }]);
    expect(total).toEqual({ ...nothing, guestLaps: 2 });
    expect(main).toBeUndefined();
  });

  it("adds up time at the wheel and mistakes, of the week alone", () => {
    const off: Told = [90_000, "off"];
    const { lines, total } = state(
      combo("a", [digest(3, [off], "a3"), digest(4, [85_000, off], "a4"), digest(5, [off], "a5")]),
      combo("b", [digest(6, [84_000], "b6")]),
    );
    expect(lines.map(({ drivingMs, mistakes }) => [drivingMs, mistakes])).toEqual([
      [265_000, 2],
      [84_000, 0],
    ]);
    expect(total).toMatchObject({ sessions: 3, drivingMs: 349_000, mistakes: 2 });
  });

  it("has the same lines whatever order combos and sessions come in, of as many laps by the combo's id", () => {
    const a = combo("a", [
      digest(0, about(86_000), "a0"),
      digest(4, about(85_000), "a4"),
      digest(6, about(84_000), "a6"),
    ]);
    const b = combo("b", [digest(5, about(85_000), "b5"), digest(7, about(85_000), "b7")]);
    const turned = { ...a, digests: a.digests.toReversed() };
    expect(state(b, turned).lines).toEqual(state(a, b).lines);
    expect(state(b, turned).lines.map(({ comboId }) => comboId)).toEqual(["a", "b"]);
    expect(state(turned).lines[0]?.usual?.ms).toBe(84_025);
    expect(state(turned).main?.week.sessions).toBe(2);
  });

  it("knows nothing of a page turned after its last session", () => {
    const from = Date.UTC(2026, 0, 10);
    const page = { id: "p", createdAt: 0, updatedAt: 0, comboId: "a", from, reason: "physics" };
    const { lines } = state(
      combo("a", [digest(0, about(86_000)), digest(5, about(85_000))], { pages: [page] }),
    );
    expect(lines[0]?.bestBefore?.ms).toBe(85_800);
  });

  it("turns a page at the instant of a session", () => {
    const from = aSession(5).startedAt;
    const page = { id: "p", createdAt: 0, updatedAt: 0, comboId: "a", from, reason: "physics" };
    const { lines } = state(
      combo("a", [digest(0, about(80_000)), digest(5, about(85_000))], { pages: [page] }),
    );
    expect(lines[0]).toMatchObject({ bestBefore: undefined, best: { ms: 84_800 } });
  });

  it("says how far the level has moved in the four weeks to the Sunday", () => {
    const past = [-44, -24, -14, -4, 5].map((day, step) => digest(day, about(87_000 - 400 * step)));
    const [line] = state(combo("a", past)).lines;
    expect(line?.lately).toMatchObject({
      known: true,
      // They begin on 15 December; the sessions of 18 November and 8 December lie before.
      value: { from: "2025-12-18", to: "2026-01-06", sessions: 3 },
    });
  });

  it("tells the finding from the twelve weeks to the Sunday", () => {
    const past = [-100, -80, -70, -60, 5].map((day, step) => digest(day, about(87_000 - 400 * step)));
    expect(state(combo("a", past)).main?.season.sessions).toBe(3);
  });

  it("counts laps by day and clean laps, for each combo and in all", () => {
    const { lines, total } = state(
      combo("a", [digest(4, about(85_000)), digest(5, about(85_000), "a5")]),
      combo("b", [digest(5, [60_000, [61_000, "off"]], "b5")]),
    );
    expect(lines.map(({ days }) => days)).toEqual([
      [6, 6, 0, 0, 0, 0, 0],
      [0, 2, 0, 0, 0, 0, 0],
    ]);
    expect(total).toMatchObject({ days: [6, 8, 0, 0, 0, 0, 0], laps: 14, clean: 13, timed: 14 });
  });

  it("a week that is not over stands as of today", () => {
    const digests = [digest(4, about(85_000))];
    const asked = { monday, preferences: choices, today: "2026-01-07" };
    const open = target({ value: 80_000, by: "2026-01-09" });
    const archivedThen = target({ id: "later", value: 80_000, archivedAt: Date.UTC(2026, 0, 6) });
    const { targets } = weekStatement({
      ...asked,
      combos: [combo("a", digests, { targets: [open, archivedThen] })],
    });
    expect(targets.map(({ target: { id }, standing }) => [id, standing])).toEqual([
      ["t", { kind: "open", daysLeft: 2, lostOn: undefined }],
      ["later", expect.objectContaining({ kind: "open" })],
    ]);
    const past = [-22, -21, -20, 4].map((day, step) => digest(day, about(87_000 - 400 * step), `p${step}`));
    const [line] = weekStatement({ ...asked, combos: [combo("a", past)] }).lines;
    // The four weeks to Wednesday begin on 11 December; those to the Sunday after it on the 15th.
    expect(line?.lately).toMatchObject({ value: { from: "2025-12-11", sessions: 3 } });
  });

  it("carries no usual lap forward where the week has no session of five laps", () => {
    const short = digest(4, [85_000, 85_100]);
    const [line] = state(combo("a", [digest(0, about(86_000)), short])).lines;
    expect(line?.usualBefore?.ms).toBe(86_025);
    expect(line?.usual).toBeUndefined();
  });

  it("counts the Monday to the week, and the Sunday before it to what was brought forward", () => {
    const [line] = state(combo("a", [digest(3, about(86_000)), digest(4, about(85_000))])).lines;
    expect([line?.usualBefore?.ms, line?.usual?.ms]).toEqual([86_025, 85_025]);
    expect([line?.bestBefore?.ms, line?.best?.ms]).toEqual([85_800, 84_800]);
  });

  it("a target set after its lap was driven is not newly reached, though it was in the week", () => {
    const set = target({ value: 84_800, setAt: aSession(6).startedAt, setOn: "2026-01-07" });
    const [found] = state(combo("a", [digest(5, about(85_000))], { targets: [set] })).targets;
    expect(found).toMatchObject({
      standing: { kind: "reached before", on: "2026-01-06" },
      isNewlyReached: false,
    });
  });

  it("tells a target as it was wanted at the end of the week, whatever it was changed to since", () => {
    const was = {
      kind: "best",
      value: 84_950,
      until: Date.UTC(2026, 0, 14),
      untilDay: "2026-01-14",
    } as const;
    const changed = target({ value: 80_000, by: "2026-02-01", earlier: [was] });
    const [found] = state(combo("a", [digest(6, [84_900])], { targets: [changed] })).targets;
    expect(found).toMatchObject({ target: { value: 84_950 }, standing: { kind: "reached" } });
    expect(found?.target).not.toHaveProperty("by");
  });

  it("reviews its combo with the targets set by the Sunday", () => {
    const targets = [
      target({ id: "sunday", setOn: "2026-01-11" }),
      target({ id: "monday", setOn: "2026-01-12" }),
    ];
    const { main } = state(combo("a", [digest(5, about(85_000))], { targets }));
    expect(main?.week.targets.map(({ target: { id } }) => id)).toEqual(["sunday"]);
  });

  it("a target reached on the Monday is newly reached; those of all combos stand the nearest date first", () => {
    const books = [
      combo("a", [digest(4, about(85_000), "a4")], {
        targets: [target({ value: 84_800, by: "2026-02-02" })],
      }),
      combo("b", [], { targets: [target({ id: "b", comboId: "b", by: "2026-02-01" })] }),
    ];
    const found = state(...books).targets;
    expect(found.map(({ target: { id }, isNewlyReached }) => [id, isNewlyReached])).toEqual([
      ["b", false],
      ["t", true],
    ]);
  });

  it("the lines add up to the sums, whatever was driven", () => {
    const laps = fc.array(fc.integer({ min: 60_000, max: 99_000 }), { minLength: 1, maxLength: 8 });
    const some = fc.array(fc.tuple(fc.integer({ min: 0, max: 14 }), laps), { maxLength: 6 });
    fc.assert(
      fc.property(fc.array(some, { maxLength: 4 }), (books) => {
        const combos = books.map((sessions, index) =>
          combo(
            `combo ${index}`,
            sessions.map(([day, times], n) => digest(day, times, `${index} ${n}`)),
          ),
        );
        const { lines, total, days } = state(...combos);
        for (const key of ["sessions", "laps", "drivingMs", "mistakes"] as const)
          expect(lines.reduce((sum, line) => sum + line[key], 0)).toBe(total[key]);
        expect(days.reduce((sum, day) => sum + day.laps, 0)).toBe(total.laps);
      }),
      { numRuns: 60 },
    );
  });
});
