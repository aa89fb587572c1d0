import type { Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { liveRows } from "./combos.ts";
import { deleteRow } from "./rowWrites.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

export interface NewPage {
  /** The combos whose times no longer compare with those before, or all there are. */
  readonly comboIds: readonly Id[] | "all";
  /** From this instant on. */
  readonly from: number;
  readonly reason: string;
}

/** Turns a new page: PB, curve and targets of the combos start afresh, the old stays readable. */
export function turnPage(book: Logbook, { comboIds, from, reason }: NewPage): Promise<Change> {
  return write(book, "Page not turned", async (writer) => {
    const all = comboIds === "all" ? (await liveRows(writer, "combos")).map(({ id }) => id) : comboIds;
    for (const comboId of all) {
      await writer.get("combos", comboId);
      await writer.add("pages", { comboId, from, reason });
    }
    const where = all.length === 1 ? "" : ` for ${all.length} combos`;
    return changeOf(writer, `New page begun${where}: ${reason}`);
  });
}

/** Takes a page out: times before and after it compare again. */
export function deletePage(book: Logbook, id: Id): Promise<Change> {
  return deleteRow(book, "pages", "Page", id);
}
