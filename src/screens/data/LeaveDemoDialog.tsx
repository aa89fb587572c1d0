import { useState } from "react";
import type { ShelvedLogbook } from "#db";
import { sayDate } from "#domain";
import type { GoesWithDemo } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Name } from "#ui/Name.tsx";
import { Select } from "#ui/Select.tsx";
import { counted } from "#words";

/** So many are named of each kind. */
const named = 12;

interface LeaveDemoDialogProps {
  readonly found: GoesWithDemo;
  /** The driver's own logbooks, the one opened last first. */
  readonly own: readonly ShelvedLogbook[];
  readonly onClose: () => void;
  readonly onMove: (to: ShelvedLogbook | undefined) => Promise<unknown>;
  readonly onRemove: () => void;
}

/** Before the demo goes: what the driver typed in it is named, and offered a move to a logbook of their own. */
export function LeaveDemoDialog({ found, own, onClose, onMove, onRemove }: LeaveDemoDialogProps) {
  const { laps, sessions, others, changed, halfTyped } = found;
  const [wanted, setWanted] = useState(own[0]?.name ?? "");
  const [isMoving, setMoving] = useState(false);
  const to = own.find(({ name }) => name === wanted);
  const hasTyped = laps > 0 || others > 0 || halfTyped.length > 0;
  const move = async () => {
    setMoving(true);
    await onMove(to);
    onClose();
  };
  const remove = (
    <Button size="between" variant="caution" disabled={isMoving} onClick={onRemove}>
      {hasTyped ? "Remove all of it" : "Remove the demo"}
    </Button>
  );
  return (
    <Dialog
      title="Remove the demo logbook"
      role="alertdialog"
      focus="actions"
      onClose={onClose}
      actions={
        <ButtonRow
          removes={hasTyped ? remove : undefined}
          others={
            <Button size="between" onClick={onClose}>
              Keep the demo
            </Button>
          }
          main={
            hasTyped ? (
              <Button size="between" variant="primary" disabled={isMoving} onClick={() => void move()}>
                Move what I typed, then remove the demo
              </Button>
            ) : (
              remove
            )
          }
        />
      }
    >
      {laps > 0 && (
        <>
          <p>
            You typed {counted(laps, "lap")} in the demo
            {others > 0 && `, and ${counted(others, "other thing")} (targets, rig settings, whole runs)`}:
          </p>
          <ul>
            {sessions.slice(0, named).map((session) => (
              <li key={session.id}>
                {sayDate(session.date)}, <Name>{session.combo}</Name>: {counted(session.laps, "lap")}
              </li>
            ))}
            {sessions.length > named && <li>and {counted(sessions.length - named, "session")} more</li>}
          </ul>
        </>
      )}
      {laps === 0 && others > 0 && (
        <p>
          You typed {counted(others, "thing")} in the demo: sessions, targets, rig settings or whole runs.
        </p>
      )}
      {halfTyped.length > 0 && (
        <>
          <p>Half typed in the demo, and not stored yet:</p>
          <ul>
            {halfTyped.slice(0, named).map((text, index) => (
              <li key={index}>
                <strong>
                  <Name>{text}</Name>
                </strong>
              </li>
            ))}
            {halfTyped.length > named && <li>and {halfTyped.length - named} more</li>}
          </ul>
        </>
      )}
      {hasTyped && (
        <p>
          What you typed can move to {own.length === 0 ? "a new logbook of your own" : "your own logbook"},
          with its sessions and combos. The demo is removed only after that is stored.
        </p>
      )}
      {own.length > 1 && hasTyped && (
        <Select
          label="Move it to"
          value={wanted}
          options={own.map(({ name, title }) => ({ value: name, label: title }))}
          onChange={setWanted}
        />
      )}
      {changed > 0 && (
        <p>You also changed {counted(changed, "row")} that came with the demo. That goes with the demo.</p>
      )}
    </Dialog>
  );
}
