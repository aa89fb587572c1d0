import type { CalendarDate, EarlierTarget, Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields } from "../patch.ts";
import type { Change } from "./change.ts";
import { liveRows } from "./combos.ts";
import { addRow, deleteRow, type NewRow, type RowEdit } from "./rowWrites.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/** Sets a target for a combo. Without `setAt`, now. */
export function setTarget(
  book: Logbook,
  target: Omit<NewRow<"targets">, "setAt"> & { readonly setAt?: number },
): Promise<Change & { readonly id: Id }> {
  return addRow(book, "targets", "Target", { setAt: book.clock(), ...target });
}

/**
 * Changes named fields of a target. What was wanted before stays in its history, but for a slip put right on the day it was set
 * or changed last.
 * @param on the practice day
 */
export function editTarget(
  book: Logbook,
  { id, patch, expected, on }: RowEdit<"targets"> & { readonly on: CalendarDate },
): Promise<Change> {
  return write(book, "Target not changed", async (writer) => {
    const before = await writer.get("targets", id);
    const after = await writer.patch<"targets">("targets", id, patch);
    const { kind, value, laps, by, setOn, earlier = [] } = before;
    const isAnother = wanted.some((field) => before[field] !== after[field]);
    if (isAnother && (earlier.at(-1)?.untilDay ?? setOn) < on) {
      const was: EarlierTarget = {
        ...{ kind, value, until: writer.now, untilDay: on },
        ...(laps !== undefined && { laps }),
        ...(by !== undefined && { by }),
      };
      await writer.patch("targets", id, { earlier: [...earlier, was] });
    }
    return changeOf(writer, "Target changed", overwrittenFields(before, patch, expected));
  });
}

/** What a target is told by; a change of anything else makes no other target of it. */
const wanted = ["kind", "value", "laps", "by"] as const;

/** Sets a target that was missed once more, with a new date, and puts the old one into the archive. */
export function renewTarget(
  book: Logbook,
  renewal: {
    /** The target that was missed, and the id of the one that takes its place. */
    readonly id: Id;
    readonly newId: Id;
    readonly by: CalendarDate;
    readonly setOn: CalendarDate;
    /** The figure now, where it is known. */
    readonly start?: number | undefined;
  },
): Promise<Change> {
  const { id, newId, by, setOn, start } = renewal;
  return write(book, "Target not set anew", async (writer) => {
    const { comboId, kind, value, laps, process, why, note } = await writer.get("targets", id);
    const fields = {
      ...{ comboId, kind, value, by, setOn, setAt: writer.now },
      ...(laps !== undefined && { laps }),
      ...(process !== undefined && { process }),
      ...(why !== undefined && { why }),
      ...(note !== undefined && { note }),
      ...(start !== undefined && { start }),
    };
    if ((await writer.find("targets", newId)) === undefined) await writer.add("targets", fields, newId);
    await writer.patch("targets", id, { archivedAt: writer.now });
    return changeOf(writer, "Target set anew");
  });
}

/** Archives a target, or takes it out of the archive. */
export function archiveTarget(
  book: Logbook,
  { id, isArchived = true }: { readonly id: Id; readonly isArchived?: boolean },
): Promise<Change> {
  return write(book, "Target not archived", async (writer) => {
    await writer.patch("targets", id, { archivedAt: isArchived ? writer.now : undefined });
    return changeOf(writer, isArchived ? "Target archived" : "Target taken out of the archive");
  });
}

/**
 * Targets that were set by a clock ahead count from now on: nobody knows on which day they were set, and until the day that
 * clock showed no lap would reach them.
 * @param upTo instants later than this are not believed
 * @param on the day they are taken to be set on
 */
export function setTargetsAhead(
  book: Logbook,
  { upTo, on }: { readonly upTo: number; readonly on: CalendarDate },
): Promise<Change> {
  return write(book, "Targets not dated right", async (writer) => {
    const ahead = (await liveRows(writer, "targets")).filter(({ setAt }) => setAt > upTo);
    for (const { id } of ahead) await writer.patch("targets", id, { setAt: writer.now, setOn: on });
    return changeOf(
      writer,
      ahead.length === 1 ? "Target dated right" : `${ahead.length} targets dated right`,
    );
  });
}

export function deleteTarget(book: Logbook, id: Id): Promise<Change> {
  return deleteRow(book, "targets", "Target", id);
}
