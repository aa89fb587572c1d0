import { useLiveQuery } from "dexie-react-hooks";
import { listLogbooks, type ShelvedLogbook } from "#db";
import { useLogbook } from "./logbookContext.ts";

/** Every logbook on the shelf, the one opened last first; undefined until read. */
export function useShelved(): readonly ShelvedLogbook[] | undefined {
  const { shelf } = useLogbook();
  return useLiveQuery(() => listLogbooks(shelf), [shelf]);
}

/** What the clock said when all that was new was sent last; undefined until read, and where nothing was sent. */
export function useSentAt(): number | undefined {
  const { shelf, book } = useLogbook();
  return useLiveQuery(async () => (await shelf.sent.get(book.name))?.at, [shelf, book.name]);
}

/** What the shelf knows of the open logbook: title, last backup, laps since. */
export function useShelvedNow(): ShelvedLogbook {
  const { shelf, entry } = useLogbook();
  return useLiveQuery(() => shelf.logbooks.get(entry.name), [shelf, entry.name]) ?? entry;
}
