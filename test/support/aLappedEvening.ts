import { addCombo, addLap, type Logbook, startSession } from "#db";
import { aLap } from "./aLap.ts";

/** An evening of one lap, 1:23.456. */
export async function aLappedEvening(book: Logbook): Promise<void> {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const { runId } = await startSession(book, { comboId, date: "2026-11-25", zone: "UTC" });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_456) });
}

/** The lap of that evening, and its run. */
export async function itsLap(book: Logbook): Promise<{ readonly runId: string; readonly lapId: string }> {
  const [run] = await book.tables.runs.toArray();
  const lapId = run?.laps[0]?.id;
  if (run === undefined || lapId === undefined) throw new Error("There is no lap.");
  return { runId: run.id, lapId };
}
