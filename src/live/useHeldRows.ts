import { type RefObject, useEffect, useRef } from "react";
import { type ReadOnlyLogbook, runsOfSession, sessionsOpen } from "#db";
import { type AllRows, noRows } from "#domain";
import { followRows } from "./followRows.ts";
import { useLogbook } from "./logbookContext.ts";

/** Tables small enough to be held whole. */
const small = ["cars", "tracks", "layouts", "combos", "pages", "rigs", "targets", "preferences"] as const;

/** Reading them waits until the page has been drawn and the first laps can be typed. */
const restMs = 2000;

/**
 * What this tab can still hand out when the stored logbook disappears under it: the open session with its runs, and the
 * small tables, as they were read last. Empty until the first moment of rest.
 */
export function useHeldRows(): RefObject<AllRows> {
  const { book } = useLogbook();
  const held = useRef<AllRows>(noRows);
  useEffect(() => {
    held.current = noRows;
    const hold = (rows: Partial<AllRows>) => {
      if (book.status.get().kind === "ok") held.current = { ...held.current, ...rows };
    };
    let ends: (() => void)[] = [];
    const clock = setTimeout(() => {
      ends = [followRows(() => readSmall(book), hold), followRows(() => readOpenSession(book), hold)];
    }, restMs);
    return () => {
      clearTimeout(clock);
      for (const end of ends) end();
    };
  }, [book]);
  return held;
}

async function readSmall({ tables }: ReadOnlyLogbook): Promise<Partial<AllRows>> {
  const read = await Promise.all(small.map(async (table) => [table, await tables[table].toArray()] as const));
  return Object.fromEntries(read);
}

async function readOpenSession(book: ReadOnlyLogbook): Promise<Partial<AllRows>> {
  const sessions = await sessionsOpen(book);
  const runs = await Promise.all(sessions.map(({ id }) => runsOfSession(book, id)));
  return { sessions, runs: runs.flat() };
}
