import {
  addCombo,
  addLap,
  createLogbook,
  dump,
  idMaker,
  newestSchema,
  openLogbook,
  openShelf,
  startSession,
} from "#db";
import type { AllRows } from "#domain";
import { writeBackup } from "#files";
import { sendHere } from "#live";
import { aLap } from "./aLap.ts";
import { fixedClock } from "./fixedClock.ts";

/** A logbook of its own on a shelf, with an open session of two laps, and the errands that are sent on it. */
export async function aShelvedEvening(at = Date.UTC(2026, 2, 10, 18)) {
  const clock = fixedClock(at);
  const tools = { clock: clock.now, newId: idMaker(clock.now) };
  const shelf = await openShelf(tools);
  const { name } = await createLogbook(shelf, { title: "Evenings" });
  const book = await openLogbook({ name, ...tools });
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const { sessionId, runId } = await startSession(book, { comboId, date: "2026-03-10", zone: "UTC" });
  const lapIds = [book.newId(), book.newId()] as const;
  await addLap(book, { runId, id: lapIds[0], lap: aLap(83_456) });
  await addLap(book, { runId, id: lapIds[1], lap: aLap(83_512) });
  return { clock, tools, shelf, name, book, comboId, sessionId, runId, lapIds, send: sendHere(tools) };
}

/** Rows as a backup file. */
export async function fileOf(rows: AllRows, title = "PC"): Promise<Blob> {
  return new Blob([await writeBackup(rows, { title, schema: newestSchema, sha256: undefined })]);
}

/** The rows a logbook holds, by its name. */
export async function rowsNamed(
  name: string,
  tools: Awaited<ReturnType<typeof aShelvedEvening>>["tools"],
): Promise<AllRows> {
  const book = await openLogbook({ name, ...tools });
  const rows = await dump(book);
  book.close();
  return rows;
}
