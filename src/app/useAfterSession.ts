import { keptCopies, type Logbook, markOfBook, type Shelf } from "#db";
import { type OpenLogbook, useAtRest } from "#live";

/** The page rests before the whole logbook is read. */
const restMs = 4000;
const lockName = "lap-ledger after session";

/**
 * Once no session is open and one has ended since the last time, the logbook is kept as it is: on the shelf, and in
 * the folder of automatic backup. After the end of a session, and after opening, should the page have been closed
 * before.
 */
export function useAfterSession(): void {
  useAtRest(restMs, keepAsItIs);
}

function keepAsItIs({ book, shelf, sendOut }: OpenLogbook): Promise<void> {
  return inOneTab(async () => {
    if (await isDue(book, shelf)) await sendOut(book.name, "afterSession", null);
  });
}

/** Whether the sessions are others than in the state kept last. No clock is asked: one that stood wrong would stop this for ever. */
async function isDue(book: Logbook, shelf: Shelf): Promise<boolean> {
  const [mark, kept] = await Promise.all([markOfBook(book), keptCopies(shelf, book.name)]);
  return mark !== undefined && kept.find(({ why }) => why === "session")?.mark !== mark;
}

/** Two tabs come to rest at the same time; one of them does the work, the other finds it done. */
async function inOneTab(work: () => Promise<void>): Promise<void> {
  if (navigator.locks === undefined) return work();
  await navigator.locks.request(lockName, work);
}
