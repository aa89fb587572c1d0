import { endSession } from "#db";
import { longestText } from "#domain";
import { useDraft, useToday, useWriteForm } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import type { SessionData } from "./useSession.ts";

interface EndSessionProps {
  readonly data: SessionData;
  /** Sum of its laps: how long a session took that is entered afterwards. */
  readonly drivingMs: number;
  readonly onClose: () => void;
}

/**
 * Ends a session with a note to oneself, read again when this combo is next driven, and leads to its page: what it brought.
 */
export function EndSession({ data, drivingMs, onClose }: EndSessionProps) {
  const today = useToday(data.preferences);
  const { session } = data;
  const draft = useDraft(`note ${session.id}`, session.note);
  const { field, submit } = useWriteForm({
    typed: { value: { note: draft.value }, set: (typed) => draft.set(typed?.note) },
    reading: { ok: true, value: draft.value.trim() },
    write: (book, note) => {
      const end = session.date === today ? {} : { at: session.startedAt + drivingMs };
      return endSession(book, { sessionId: session.id, note, ...end });
    },
    isUndoOffered: true,
    onStored: () => {
      onClose();
      goTo({ place: "log", sessionId: session.id }, "replace");
    },
  });
  return (
    <Dialog
      title="End the session"
      onClose={onClose}
      actions={
        <ButtonRow
          others={
            <Button size="between" onClick={onClose}>
              Not yet
            </Button>
          }
          main={
            <Button size="between" variant="primary" onClick={submit}>
              End the session
            </Button>
          }
        />
      }
    >
      <TextArea
        label="Note to yourself, if you like"
        {...field("note")}
        maxLength={longestText}
        hint="You will read it when you next drive this combo."
      />
      <HalfTyped of={draft} />
    </Dialog>
  );
}
