import type { Preferences } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Patch } from "../patch.ts";
import { defaultPreferences, preferencesId } from "../preferencesRow.ts";
import type { Change } from "./change.ts";
import type { Fields } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/** Changes named preferences of the logbook. */
export function setPreferences(book: Logbook, patch: Patch<Fields<Preferences>>): Promise<Change> {
  return write(book, "Preferences not changed", async (writer) => {
    const known = await writer.find("preferences", preferencesId);
    if (known === undefined) await writer.add("preferences", { ...defaultPreferences }, preferencesId);
    await writer.patch("preferences", preferencesId, patch as Patch<Preferences>);
    return changeOf(writer, "Preferences changed");
  });
}
