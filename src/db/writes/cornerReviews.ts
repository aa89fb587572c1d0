import { type Corner, type CornerReview, fillCorners, type Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields } from "../patch.ts";
import type { Change } from "./change.ts";
import { addRow, deleteRow, type NewRow, type RowEdit } from "./rowWrites.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** What a review said of the layout's corners on its way; what is known already stays as it is. */
export interface LearntCorners {
  readonly layoutId: Id;
  readonly corners: readonly Pick<Corner, "number" | "bend" | "after">[];
}

const word = "Corner review";

/** Adds a review; corners that the layout does not have, and kinds said of them, go into the layout with it. */
export function addCornerReview(
  book: Logbook,
  row: NewRow<"cornerReviews">,
  learnt?: LearntCorners,
): Promise<Change & { readonly id: Id }> {
  return addRow(book, "cornerReviews", word, row, (writer) => learn(writer, learnt));
}

/** Changes a review, and the layout as `addCornerReview` does. */
export function editCornerReview(
  book: Logbook,
  { id, patch, expected }: RowEdit<"cornerReviews">,
  learnt?: LearntCorners,
): Promise<Change> {
  return write(book, `${word} not changed`, async (writer) => {
    const before = await writer.get("cornerReviews", id);
    await writer.patch<"cornerReviews">("cornerReviews", id, patch);
    await learn(writer, learnt);
    return changeOf(writer, `${word} changed`, overwrittenFields(before, patch, expected));
  });
}

export function deleteCornerReview(book: Logbook, id: CornerReview["id"]): Promise<Change> {
  return deleteRow(book, "cornerReviews", word, id);
}

async function learn(writer: Writer, learnt: LearntCorners | undefined): Promise<void> {
  if (learnt === undefined || learnt.corners.length === 0) return;
  const { corners } = await writer.get("layouts", learnt.layoutId);
  await writer.patch<"layouts">("layouts", learnt.layoutId, {
    corners: fillCorners(corners, learnt.corners),
  });
}
