import type { Id, Layout } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

export type LayoutPatch = Patch<Pick<Layout, "sectors" | "length" | "corners">>;

/** Changes what is known of a layout. */
export function editLayout(
  book: Logbook,
  edit: { readonly layoutId: Id; readonly patch: LayoutPatch; readonly expected?: Layout },
): Promise<Change> {
  return write(book, "Layout not changed", async (writer) => {
    const before = await writer.get("layouts", edit.layoutId);
    await writer.patch("layouts", edit.layoutId, edit.patch);
    return changeOf(writer, "Layout changed", overwrittenFields(before, edit.patch, edit.expected));
  });
}
