import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  createLogbook,
  dump,
  editLap,
  idMaker,
  type Logbook,
  mergeInto,
  newestSchema,
  openLogbook,
  openShelf,
  setTarget,
  startSession,
} from "#db";
import { writeBackup } from "#files";
import { sendHere } from "#live";
import { aLap } from "../../../support/aLap.ts";
import { fixedClock } from "../../../support/fixedClock.ts";

const tenYears = 3652 * 86_400_000;
const aDay = 86_400_000;
const at = Date.UTC(2027, 2, 10, 18);

/** A phone with one lap of the evening, a PC that has it too, and the phone's clock and errands. */
async function phoneAndPc() {
  const clock = fixedClock(at);
  const tools = { clock: clock.now, newId: idMaker(clock.now) };
  const shelf = await openShelf(tools);
  const [{ name }, { name: pcName }] = [
    await createLogbook(shelf, { title: "Evenings" }),
    await createLogbook(shelf, { title: "PC" }),
  ];
  shelf.close();
  const pcClock = fixedClock(at);
  const phone = await openLogbook({ name, ...tools });
  const pc = await openLogbook({ name: pcName, clock: pcClock.now, newId: idMaker(pcClock.now) });
  const { comboId } = await addCombo(phone, {
    car: { name: "Club hatch" },
    track: { name: "Varnholt Ring" },
  });
  const { runId } = await startSession(phone, { comboId, date: "2027-03-10", zone: "Europe/Berlin" });
  const lapId = phone.newId();
  await addLap(phone, { runId, id: lapId, lap: aLap(83_456) });
  await mergeInto(pc, await dump(phone), "phone");
  const send = sendHere(tools);
  const rows = (book: Logbook = phone) => dump(book);
  const lap = { runId, lapId };
  return { phone, clock, pc, pcClock, comboId, lap, rows, send, name };
}

const fileOf = async (book: Logbook) =>
  new Blob([await writeBackup(await dump(book), { title: "PC", schema: newestSchema, sha256: undefined })]);

test("a lap mended on the phone stays when a file is merged whose clock stood in 2037, once the date is confirmed", async () => {
  const { phone, clock, pc, pcClock, lap, send, name, rows } = await phoneAndPc();
  pcClock.set(at + tenYears);
  await editLap(pc, { ...lap, patch: { ms: 83_000 } });
  clock.pass(60_000);
  await editLap(phone, { ...lap, patch: { ms: 83_465 } });
  const before = await rows();
  const source = await fileOf(pc);
  const looked = await send(name, "look", { source });
  expect(looked).toMatchObject({ ok: true, preview: { merging: { ahead: { newest: at + tenYears } } } });
  const details = { source, from: "PC", title: "Evenings" };
  const done = await send(name, "merge", { ...details, isDateConfirmed: true });
  expect((await rows()).runs[0]?.laps).toMatchObject([{ ms: 83_465, updatedAt: at + 60_000 }]);
  await send(name, "takeBack", { source, ...done });
  expect(await rows()).toEqual(before);
  await send(name, "merge", { ...details, isDateConfirmed: false });
  expect((await rows()).runs[0]?.laps).toMatchObject([{ ms: 83_000, updatedAt: at + tenYears }]);
});

test("a stamp up to a day ahead is one of a clock that differs a little, and one a millisecond later is not", async () => {
  for (const [ahead, isBelieved] of [
    [aDay, true],
    [aDay + 1, false],
  ] as const) {
    const { phone, clock, pc, pcClock, lap, send, name, rows } = await phoneAndPc();
    clock.pass(60_000);
    await editLap(phone, { ...lap, patch: { ms: 83_465 } });
    pcClock.set(at + 60_000 + ahead);
    await editLap(pc, { ...lap, patch: { ms: 83_000 } });
    const source = await fileOf(pc);
    const looked = await send(name, "look", { source });
    const merging = looked.ok ? looked.preview.merging : undefined;
    expect(merging?.ahead).toEqual(isBelieved ? undefined : { count: 1, newest: at + 60_000 + ahead });
    await send(name, "merge", { source, from: "PC", title: "Evenings", isDateConfirmed: true });
    expect((await rows()).runs[0]?.laps).toMatchObject([{ ms: isBelieved ? 83_000 : 83_465 }]);
  }
});

test("putting dates right stamps anew what lies more than a day ahead, and leaves alone what lies less", async () => {
  const { clock, pc, pcClock, comboId, lap, send, rows } = await phoneAndPc();
  const put = () => send(pc.name, "putDatesRight", { today: "2027-03-10" });
  pcClock.set(at + aDay);
  await editLap(pc, { ...lap, patch: { ms: 83_000 } });
  const before = await rows(pc);
  expect(await put()).toBe(0);
  expect(await rows(pc)).toEqual(before);
  clock.set(at - 1);
  expect(await put()).toBe(1);
  expect((await rows(pc)).runs[0]?.laps).toMatchObject([
    { ms: 83_000, updatedAt: at + 1, had: [at, at + aDay] },
  ]);
  clock.set(at);
  pcClock.set(at + aDay + 1);
  await setTarget(pc, { comboId, kind: "best", value: 82_000, setOn: "2027-03-11" });
  expect(await put()).toBe(1);
  expect((await rows(pc)).targets).toMatchObject([{ value: 82_000, setOn: "2027-03-10", setAt: at }]);
});
