import "fake-indexeddb/auto";

import { describe, expect, it } from "vitest";
import {
  draftAnew,
  type Logbook,
  moveLine,
  planToCome,
  putLine,
  removeLine,
  type SeenPlan,
  setPlanMinutes,
  startSession,
  takeTemplate,
  undoChange,
  waitingPlan,
} from "#db";
import type { PlannedRun } from "#domain";
import { anOpenSession } from "../../../support/aLogbook.ts";

const draft = (book: Logbook): readonly PlannedRun[] =>
  ["Warm up", "Corner 5", "See what it brought"].map((purpose) => ({ id: book.newId(), purpose, laps: 8 }));

async function aDraft() {
  const opened = await anOpenSession();
  const plan: SeenPlan = { comboId: opened.comboId, lines: draft(opened.book), minutes: 45 };
  const [first, second, third] = plan.lines;
  if (first === undefined || second === undefined || third === undefined) throw new Error("no lines");
  const purposes = async () =>
    (await waitingPlan(opened.book, opened.comboId))?.lines.map(({ purpose }) => purpose);
  return { ...opened, plan, first, second, third, purposes };
}

describe("the first change of a draft", () => {
  it("stores it with its minutes, and taken back leaves the draft", async () => {
    const { book, comboId, plan, second, purposes } = await aDraft();
    const line = { ...second, purpose: "Corner 5, earlier" };
    const change = await putLine(book, plan, { line, seen: second });
    expect(change.what).toBe("Run of the plan changed");
    expect(await purposes()).toEqual(["Warm up", "Corner 5, earlier", "See what it brought"]);
    expect((await planToCome(book, comboId)).minutes).toBe(45);
    await undoChange(book, change);
    expect(await purposes()).toBeUndefined();
  });

  it("goes into the plan that another tab stored meanwhile, under other ids", async () => {
    const { book, plan, first, second, purposes } = await aDraft();
    await putLine(book, plan, { line: { ...first, purpose: "Slow laps" }, seen: first });
    const elsewhere = { ...plan, lines: plan.lines.map((line) => ({ ...line, id: book.newId() })) };
    const [, mine] = elsewhere.lines;
    const change = await putLine(book, elsewhere, {
      line: { ...second, purpose: "Corner 6" },
      seen: mine,
    });
    expect(change.overwrote).toBeUndefined();
    expect(await purposes()).toEqual(["Slow laps", "Corner 6", "See what it brought"]);
  });
});

describe("a plan changed in two tabs", () => {
  it("keeps what was changed in either", async () => {
    const { book, plan, first, second, third, purposes } = await aDraft();
    await removeLine(book, plan, first);
    await moveLine(book, plan, { line: third, by: -1 });
    await putLine(book, plan, { line: { id: book.newId(), purpose: "A long run" } });
    expect(await purposes()).toEqual(["See what it brought", "Corner 5", "A long run"]);
    // What was being changed is gone: it is added, and nothing that was typed is lost.
    await removeLine(book, plan, second);
    await putLine(book, plan, { line: { ...second, purpose: "Corner 5, earlier" }, seen: second });
    expect(await purposes()).toEqual(["See what it brought", "A long run", "Corner 5, earlier"]);
  });

  it("says where both changed the same line, and which one stands now", async () => {
    const { book, plan, second, purposes } = await aDraft();
    await putLine(book, plan, { line: { ...second, laps: 5 }, seen: second });
    const change = await putLine(book, plan, { line: { ...second, purpose: "Corner 6" }, seen: second });
    expect(change.overwrote).toEqual(["lines"]);
    expect(change.what).toBe("Run of the plan changed; it had been changed elsewhere meanwhile");
    await undoChange(book, change);
    expect(await purposes()).toEqual(["Warm up", "Corner 5", "See what it brought"]);
  });

  it("says where a template or a new draft takes the place of what another tab did", async () => {
    const { book, plan, second } = await aDraft();
    await putLine(book, plan, { line: { ...second, laps: 5 }, seen: second });
    const taken = await takeTemplate(book, plan, { name: "Short evening", lines: draft(book) });
    expect(taken.overwrote).toEqual(["lines"]);
    await undoChange(book, taken);
    expect((await draftAnew(book, plan)).overwrote).toEqual(["lines"]);
  });
});

it("a line moves one place, and not past an end", async () => {
  const { book, plan, first, third, purposes } = await aDraft();
  expect((await moveLine(book, plan, { line: first, by: 1 })).what).toBe("Run moved to place 2 of 3");
  expect(await purposes()).toEqual(["Corner 5", "Warm up", "See what it brought"]);
  expect((await moveLine(book, plan, { line: third, by: 1 })).edits).toEqual([]);
});

it("a plan is put away for the draft, keeps its minutes, and comes back", async () => {
  const { book, comboId, plan, third, purposes } = await aDraft();
  await removeLine(book, plan, third);
  const stored = await waitingPlan(book, comboId);
  const change = await draftAnew(book, { ...plan, lines: stored?.lines ?? [] });
  expect(change.overwrote).toBeUndefined();
  expect(await planToCome(book, comboId)).toMatchObject({ row: { lines: [] }, minutes: 45 });
  await undoChange(book, change);
  expect(await purposes()).toEqual(["Warm up", "Corner 5"]);
});

it("minutes are said before there is a plan, with one, and taken back to the usual evening", async () => {
  const { book, comboId, clock, plan, third, purposes } = await aDraft();
  const minutes = async () => (await planToCome(book, comboId)).minutes;
  await setPlanMinutes(book, { comboId, minutes: 30 });
  expect([await minutes(), await purposes()]).toEqual([30, undefined]);
  await removeLine(book, plan, third);
  await setPlanMinutes(book, { comboId, minutes: 60 });
  expect([await minutes(), await purposes()]).toEqual([60, ["Warm up", "Corner 5"]]);
  clock.pass(60_000);
  const lines = (await waitingPlan(book, comboId))?.lines ?? [];
  await startSession(book, { comboId, date: "2026-03-11", zone: "Europe/Berlin", plan: lines });
  expect(await minutes()).toBe(60);
  clock.pass(60_000);
  await setPlanMinutes(book, { comboId, minutes: undefined });
  expect(await minutes()).toBeUndefined();
});
