import { screen, within } from "@testing-library/react";
import { addCombo, addLaps, type Logbook, type NewLap, startSession } from "#db";
import { LogScreen } from "../../src/screens/log/LogScreen.tsx";
import { aLap } from "./aLap.ts";
import { renderAt } from "./renderAt.tsx";
import { pass, separateMs } from "./waits.ts";

/** Where the component tests of Log stand: 25 November 2026, 19:00 in Berlin. */
const at = Date.UTC(2026, 10, 25, 18);

/** Log, over a logbook that `fill` has written into. */
export const renderLog = (fill?: (book: Logbook) => Promise<unknown>, hash = "#/log", now = at) =>
  renderAt(hash, <LogScreen />, fill, now);

/** One combo, "Varnholt Ring · Club hatch". */
export async function aCombo(book: Logbook): Promise<string> {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  return comboId;
}

/** An open session of a combo with these laps in its first run. */
export async function openWith(
  book: Logbook,
  laps: readonly (number | Partial<NewLap>)[],
  comboId?: string,
): Promise<{ readonly comboId: string; readonly sessionId: string; readonly runId: string }> {
  const combo = comboId ?? (await aCombo(book));
  const started = await startSession(book, { comboId: combo, date: "2026-11-25", zone: "Europe/Berlin" });
  await addLaps(book, {
    runId: started.runId,
    laps: laps.map((lap) => ({
      id: book.newId(),
      lap: typeof lap === "number" ? aLap(lap) : aLap(lap.ms ?? 0, lap),
    })),
  });
  return { comboId: combo, sessionId: started.sessionId, runId: started.runId };
}

/** The field of the entry line, once the session's page is there. */
export const entryField = async () =>
  within(await screen.findByRole("region", { name: "Entry" })).getByRole("textbox");

/** The block of one run. */
export const runBlock = (number: number) => within(screen.getByRole("region", { name: `Run ${number}` }));

/** The cells of each lap of a run, as they are read. */
export const lapRows = (number: number) =>
  runBlock(number)
    .getAllByRole("row")
    .slice(1)
    .map((row) => [...row.children].map((cell) => cell.textContent));

/** A key pressed at once after another is taken for one that bounced; the driver reads first. */
export const pauseToRead = () => pass(separateMs);
