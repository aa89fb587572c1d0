import type { AssumedPractice, Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/** Keeps the practice that the driver counts on with a combo; a figure that is undefined is taken as it was lately again. */
export function setPractice(
  book: Logbook,
  {
    comboId,
    practice,
  }: {
    readonly comboId: Id;
    readonly practice: { readonly [F in keyof AssumedPractice]?: number | undefined };
  },
): Promise<Change> {
  return write(book, "Practice not stored", async (writer) => {
    const { practice: before } = await writer.get("combos", comboId);
    const kept = Object.entries({ ...before, ...practice }).filter(([, figure]) => figure !== undefined);
    await writer.patch("combos", comboId, {
      practice: kept.length === 0 ? undefined : Object.fromEntries(kept),
    });
    return changeOf(writer, "Practice to count on stored");
  });
}
