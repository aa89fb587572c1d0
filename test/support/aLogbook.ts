import "fake-indexeddb/auto";
import { addCombo, idMaker, type Logbook, openLogbook, startSession } from "#db";
import { fixedClock } from "./fixedClock.ts";

let opened = 0;

/** An empty logbook of its own, with a clock that tests set. */
export async function aLogbook(at = Date.UTC(2026, 2, 10, 18)) {
  const clock = fixedClock(at);
  opened += 1;
  const book = await openLogbook({ name: `test-${opened}`, clock: clock.now, newId: idMaker(clock.now) });
  return { book, clock };
}

/** A logbook with one combo and an open session with its first run. */
export async function anOpenSession(at?: number): Promise<{
  readonly book: Logbook;
  readonly clock: ReturnType<typeof fixedClock>;
  readonly comboId: string;
  readonly sessionId: string;
  readonly runId: string;
}> {
  const { book, clock } = await aLogbook(at);
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const started = await startSession(book, { comboId, date: "2026-03-10", zone: "Europe/Berlin" });
  return { book, clock, comboId, sessionId: started.sessionId, runId: started.runId };
}
