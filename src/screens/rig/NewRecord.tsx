import { addRig } from "#db";
import type { CalendarDate, Id, RigSettings } from "#domain";
import { goTo } from "#state/address.ts";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { RigForm } from "./RigForm.tsx";
import type { RigField } from "./rigFields.ts";
import { textsFrom } from "./rigTexts.ts";
import { useNewRecord } from "./useNewRecord.ts";

interface NewRecordProps {
  /** The field wanted alone; undefined for the form with all of them. */
  readonly first: RigField | undefined;
  /** The session to go back to. */
  readonly sessionId: Id | undefined;
  /** The record it begins as, if there is one. */
  readonly from: RigSettings | undefined;
  readonly today: CalendarDate;
  /** What had the focus is gone. */
  readonly onDone: () => void;
}

/** The form of a new record, of one value or of all. */
export function NewRecord({ first, sessionId, from, today, onDone }: NewRecordProps) {
  const { id, typed, isRead, kept, forget } = useNewRecord(first, textsFrom(from, today));
  if (!isRead) return null;
  const leave = () => {
    forget();
    if (sessionId === undefined) goTo({ place: "rig" }, "replace");
    else goTo({ place: "log", sessionId });
    onDone();
  };
  return (
    <>
      <HalfTyped of={kept} />
      <RigForm
        title={from === undefined ? "The first record" : "Something changed"}
        first={first}
        typed={typed}
        compared={from}
        onCancel={leave}
        write={(book, fields) => addRig(book, { ...fields, id })}
        onStored={leave}
      />
    </>
  );
}
