import type { Logbook, Shelf, ShelfEntry } from "#db";
import { createContext, useContext } from "react";
import type { Ask } from "./ask.ts";

/** The logbook that is open now, and the shelf it stands on. */
export interface OpenLogbook {
  readonly book: Logbook;
  readonly shelf: Shelf;
  readonly entry: ShelfEntry;
  readonly ask: Ask;
  /** Opens another logbook of the shelf; the page then shows that one. */
  readonly openOther: (name: string) => void;
}

export const LogbookContext = createContext<OpenLogbook | undefined>(undefined);

/** The logbook that is open now. */
export function useLogbook(): OpenLogbook {
  const open = useContext(LogbookContext);
  if (open === undefined) throw new Error("A part was drawn outside an open logbook.");
  return open;
}
