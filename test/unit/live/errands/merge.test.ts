import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, dump, keptCopies, mergeInto, openLogbook } from "#db";
import { pack, writePasteText } from "#files";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";
import { aShelvedEvening, fileOf } from "../../../support/aShelvedEvening.ts";

const at = Date.UTC(2026, 2, 10, 18);
const details = { from: "backup of Tue 10 Mar 2026", title: "Evenings", isDateConfirmed: false };

/** An evening here, and the file of a device that has it and one lap more. */
async function oneLapMore() {
  const evening = await aShelvedEvening(at);
  const { book: there } = await aLogbook(at + 60_000);
  await mergeInto(there, await dump(evening.book), "phone");
  await addLap(there, { runId: evening.runId, id: there.newId(), lap: aLap(83_700) });
  evening.clock.pass(120_000);
  const lapTimes = async () => (await dump(evening.book)).runs[0]?.laps.map(({ ms }) => ms);
  return { ...evening, rows: await dump(there), source: await fileOf(await dump(there)), lapTimes };
}

test("a merge says what it does, how far it is and what it did, and so does taking it back", async () => {
  const { name, clock, send, source, lapTimes } = await oneLapMore();
  const told: unknown[] = [];
  const follow = { onProgress: (progress: unknown) => void told.push(progress) };
  const done = await send(name, "merge", { ...details, source }, follow);
  expect(done).toMatchObject({
    what: "Merged: backup of Tue 10 Mar 2026",
    rows: 1,
    mergedAt: clock.now(),
    isDateConfirmed: false,
  });
  expect(await lapTimes()).toEqual([83_456, 83_512, 83_700]);
  expect(told.slice(0, 3)).toEqual([
    { step: "Reading the file" },
    { step: "Keeping the logbook as it is" },
    { step: "Merging", share: 0 },
  ]);
  expect(told.at(-1)).toEqual({ step: "Merging", share: 1 });
  told.length = 0;
  expect(await send(name, "takeBack", { source, ...done }, follow)).toEqual({ rows: 1, skipped: [] });
  expect(await lapTimes()).toEqual([83_456, 83_512]);
  expect(told.slice(0, 2)).toEqual([
    { step: "Reading the logbook as it was" },
    { step: "Taking the merge back", share: 0 },
  ]);
  expect(told.at(-1)).toEqual({ step: "Taking the merge back", share: 1 });
});

test("the state kept from before a merge has a lap that was typed while it was kept", async () => {
  const { name, book, tools, shelf, runId, send, source, lapTimes } = await oneLapMore();
  const page = await openLogbook({ name, ...tools });
  let typed: Promise<unknown> | undefined;
  const done = await send(
    name,
    "merge",
    { ...details, source },
    {
      onProgress: ({ step, share }) => {
        if (step === "Merging" && share === 0)
          typed = addLap(page, { runId, id: book.newId(), lap: aLap(83_600) });
      },
    },
  );
  await typed;
  page.close();
  expect(await lapTimes()).toHaveLength(4);
  const [kept] = await keptCopies(shelf, name);
  expect(kept).toMatchObject({ id: done.copyId, why: "merge", laps: 3, sessions: 1 });
  await send(name, "takeBack", { source, ...done });
  expect(await lapTimes()).toEqual([83_456, 83_512, 83_600]);
});

test("a merge that brings nothing new keeps one state and changes nothing", async () => {
  const { name, book, shelf, send } = await aShelvedEvening(at);
  const before = await dump(book);
  const done = await send(name, "merge", { ...details, source: await fileOf(before) });
  expect(done.rows).toBe(0);
  expect(await dump(book)).toEqual(before);
  expect(await keptCopies(shelf, name)).toHaveLength(1);
});

test("a backup pasted as text is merged like a file, and one that was cut short is refused", async () => {
  const { name, send, source, lapTimes } = await oneLapMore();
  const text = writePasteText(await pack(await source.text()));
  const cut = await send(name, "look", { source: new Blob([text.slice(0, -5)]) });
  expect(cut).toMatchObject({ ok: false, problem: { wrong: expect.stringMatching(/not complete/) } });
  const changed = await send(name, "look", {
    source: new Blob([text.replace("lap-ledger:", "lap-ledger:!")]),
  });
  expect(changed).toMatchObject({
    ok: false,
    problem: { wrong: expect.stringMatching(/changed on its way/) },
  });
  await send(name, "merge", { ...details, source: new Blob([`from me:\n${text}\nsee you`]) });
  expect(await lapTimes()).toEqual([83_456, 83_512, 83_700]);
});

test("a session that cannot have been yet is no row of a file by this device's clock", async () => {
  const { name, send, rows } = await oneLapMore();
  const startedAt = Date.UTC(2031, 0, 1);
  const future = rows.sessions.map((row) => ({ ...row, id: `${row.id}x`, startedAt, date: "2031-01-01" }));
  const looked = await send(name, "look", {
    source: await fileOf({ ...rows, sessions: [...rows.sessions, ...future] }),
  });
  expect(looked.ok && looked.preview.bad.all + looked.preview.merging.bad.all).toBeGreaterThan(0);
});
