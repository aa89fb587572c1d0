import { LedgerFault, openLogbook, openShelf, setAside } from "#db";
import { type ErrandDetails, type ErrandName, type ErrandResult, errands } from "./errands/errands.ts";
import { type ReadSource, readSource } from "./errands/readSource.ts";
import type { Follow, SendOut } from "./errands/sending.ts";
import type { Surroundings } from "./openAtStart.ts";

/** Runs an errand here, by connections of its own to the logbook and the shelf. */
export async function runErrand<E extends ErrandName>(
  { clock, newId }: Pick<Surroundings, "clock" | "newId">,
  logbook: string,
  errand: E,
  details: ErrandDetails<E>,
  {
    onProgress,
    signal = new AbortController().signal,
    readFile = (source) => readSource(source, clock()),
  }: Follow & { readonly readFile?: ReadSource } = {},
): Promise<ErrandResult<E>> {
  const shelf = await openShelf({ clock, newId });
  try {
    const book = await openLogbook({ name: logbook, clock, newId, expect: "old" });
    const tell = (progress: Parameters<NonNullable<typeof onProgress>>[0]) => {
      if (signal.aborted) throw new LedgerFault("cancelled", "Stopped; nothing was changed.");
      onProgress?.(progress);
    };
    try {
      const result = await errands[errand](details, { book, shelf, readFile, tell, signal });
      // Most errands read every row, so they find what the page has not come upon yet.
      const bad = book.unreadable.get().filter(({ aside }) => aside !== undefined);
      if (bad.length > 0) await setAside(book, bad);
      return result;
    } finally {
      book.close();
    }
  } finally {
    shelf.close();
  }
}

/** Errands run on the spot, for tests. */
export function sendHere(surroundings: Pick<Surroundings, "clock" | "newId">): SendOut {
  return (logbook, errand, details, follow) => runErrand(surroundings, logbook, errand, details, follow);
}

/** Errands of which all that are about a file are about the same one, so it is read once. */
export function errandsAboutOneFile(surroundings: Pick<Surroundings, "clock" | "newId">): SendOut {
  let read: ReturnType<ReadSource> | undefined;
  const readFile: ReadSource = (source) => {
    read ??= readSource(source, surroundings.clock());
    return read;
  };
  return (logbook, errand, details, follow) =>
    runErrand(surroundings, logbook, errand, details, { ...follow, readFile });
}
