import { deleteSession, editSession, moveSessionToCombo, reopenSession, type SessionPatch } from "#db";
import { type Focus, focuses, formatLapTime } from "#domain";
import { useWrite } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Select } from "#ui/Select.tsx";
import { NewPageForm } from "../putRight/NewPageForm.tsx";
import { ToCombo } from "../putRight/ToCombo.tsx";
import styles from "../runs/RunDialog.module.css";
import { NoteOf, TextOf, TimeOf } from "../runs/StoredField.tsx";
import { JoinSame } from "../start/JoinSame.tsx";
import { ReferenceLaps } from "./ReferenceLaps.tsx";
import { SessionDate } from "./SessionDate.tsx";
import type { SessionData } from "./useSession.ts";

/** What belongs to the whole session, and the ways to put it right. Each change is stored at once. */
export function SessionDialog({
  data,
  onClose,
}: {
  readonly data: SessionData;
  readonly onClose: () => void;
}) {
  const { session } = data;
  const write = useWrite();
  const change = (patch: SessionPatch) =>
    write((book) => editSession(book, { sessionId: session.id, patch, expected: session }));
  const remove = async () => {
    const change = await write((book) => deleteSession(book, { sessionId: session.id }), {
      isUndoOffered: true,
    });
    if (change) {
      onClose();
      goTo({ place: "log" });
    }
  };
  return (
    <Dialog
      title="This session"
      onClose={onClose}
      actions={
        <ButtonRow
          removes={
            <Button size="between" variant="caution" onClick={remove}>
              Delete this session
            </Button>
          }
          others={
            session.endedAt !== undefined && (
              <Button
                size="between"
                onClick={() =>
                  void write((book) => reopenSession(book, { sessionId: session.id })).then(onClose)
                }
              >
                Go on with it
              </Button>
            )
          }
          main={
            <Button size="between" variant="primary" onClick={onClose}>
              Done
            </Button>
          }
        />
      }
    >
      <div className={styles["form"]}>
        <Select<Focus>
          label="Focus"
          value={session.focus}
          options={focuses.map(({ focus, word }) => ({ value: focus, label: word }))}
          onChange={(focus) => void change({ focus })}
        />
        <TimeOf
          draftKey={`dayTarget ${session.id}`}
          label="Target of the day"
          hint="A lap time, 1:23.000. Leave it empty for none."
          value={session.targetMs}
          displayDecimals={data.preferences.displayDecimals}
          onStore={(targetMs) => change({ targetMs })}
        />
        <TextOf
          draftKey={`conditions ${session.id}`}
          label="Conditions"
          value={session.conditions}
          onStore={(conditions) => change({ conditions })}
        />
        <NoteOf
          draftKey={`note ${session.id}`}
          label="Note to yourself"
          hint="Shown when you next drive this combo."
          value={session.note}
          onStore={(note) => change({ note })}
        />
        <SessionDate data={data} />
        <div>
          <Button size="between" onClick={() => goTo({ place: "data", sendId: session.id })}>
            Send this session to another device
          </Button>
        </div>
        <Disclosure title="Wrong combo?">
          <ToCombo
            from={session.comboId}
            deed="Move the session"
            move={(book, to) => moveSessionToCombo(book, { sessionId: session.id, ...to })}
            onMoved={onClose}
          />
        </Disclosure>
        <Disclosure title="Same car or track twice?">
          <div className={styles["form"]}>
            <JoinSame data={data} onJoined={onClose} />
          </div>
        </Disclosure>
        <Disclosure title="Reference lap" answer={referencesInShort(data)}>
          <div className={styles["form"]}>
            <ReferenceLaps data={data} />
          </div>
        </Disclosure>
        <Disclosure title="Layout or physics changed?">
          <NewPageForm session={session} onTurned={onClose} />
        </Disclosure>
      </div>
    </Dialog>
  );
}

/** The fastest reference lap of the combo, or that there is none. */
function referencesInShort({ references: [fastest] }: SessionData): string {
  return fastest === undefined ? "none" : formatLapTime(fastest.ms, fastest.decimals);
}
