import { useSyncExternalStore } from "react";
import type { UnreadableRow } from "#db";
import { useLogbook } from "./logbookContext.ts";

/** Rows of the open logbook that the browser could not read since it was opened, followed as more are found. */
export function useUnreadable(): readonly UnreadableRow[] {
  const { unreadable } = useLogbook().book;
  return useSyncExternalStore(unreadable.subscribe, unreadable.get);
}
