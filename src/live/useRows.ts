import { useLiveQuery } from "dexie-react-hooks";
import type { ReadOnlyLogbook } from "#db";
import { useLogbook } from "./logbookContext.ts";

/**
 * Stored rows, kept in step with the book, in other tabs too. Undefined until they have been read. A read that fails
 * is thrown into the nearest boundary.
 * @param read awaits nothing but the book
 * @param about whatever `read` depends on besides the book
 */
export function useRows<T>(
  read: (book: ReadOnlyLogbook) => Promise<T>,
  about: readonly unknown[],
): T | undefined {
  const { book } = useLogbook();
  return useLiveQuery(() => read(book), [book, ...about]);
}
