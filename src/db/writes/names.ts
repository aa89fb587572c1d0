import { type Id, sameName } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { liveRows } from "./combos.ts";
import { nameFrom } from "./rowsOf.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

const words = { cars: "car", tracks: "track", layouts: "layout" } as const;

async function rename(
  book: Logbook,
  table: "cars" | "tracks" | "layouts",
  { id, name }: { readonly id: Id; readonly name: string },
): Promise<Change> {
  const word = words[table];
  return write(book, "Name not changed", async (writer) => {
    const named = nameFrom(name, word);
    const row = await writer.get(table, id);
    const others = (await liveRows(writer, table)).filter((other) => other.id !== id);
    const siblings = others.filter(
      (other) => !("trackId" in row && "trackId" in other) || row.trackId === other.trackId,
    );
    const twin = siblings.find((other) => sameName(other.name, named));
    if (twin)
      throw new LedgerFault(
        "invalid",
        `Name not changed: there is a ${word} "${twin.name}" already. Merge the two if they are the same.`,
      );
    await writer.patch(table, id, { name: named });
    return changeOf(writer, `Name of the ${word} changed`);
  });
}

/** Renames a car; refused when another car has the same name but for case and spaces. */
export function renameCar(book: Logbook, to: { readonly id: Id; readonly name: string }): Promise<Change> {
  return rename(book, "cars", to);
}

/** Renames a track, under the rule of `renameCar`. */
export function renameTrack(book: Logbook, to: { readonly id: Id; readonly name: string }): Promise<Change> {
  return rename(book, "tracks", to);
}

/** Renames a layout, under the rule of `renameCar` within its track. */
export function renameLayout(book: Logbook, to: { readonly id: Id; readonly name: string }): Promise<Change> {
  return rename(book, "layouts", to);
}
