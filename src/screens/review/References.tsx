import { useEffect, useRef, useState } from "react";
import { deleteReference, references } from "#db";
import type { Preferences, ReferenceLap } from "#domain";
import { type DrivenCombo, useRows, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { sayLapTime } from "#words";
import styles from "./Across.module.css";
import { ReferenceForm } from "./ReferenceForm.tsx";

interface ReferencesProps {
  readonly combos: readonly DrivenCombo[];
  readonly preferences: Preferences;
}

/** Reference laps of all combos, with where each comes from: entered, put right and deleted here. */
export function References({ combos, preferences }: ReferencesProps) {
  const rows = useRows(references, []);
  const [open, setOpen] = useState<string>();
  const add = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(false);
  useEffect(() => {
    if (open === undefined && wasOpen.current) add.current?.focus();
    wasOpen.current = open !== undefined;
  }, [open]);
  if (rows === undefined) return null;
  const places = new Map(combos.map(({ id }, index) => [id, index]));
  const listed = rows
    .filter(({ comboId }) => places.has(comboId))
    .sort((a, b) => (places.get(a.comboId) ?? 0) - (places.get(b.comboId) ?? 0) || b.updatedAt - a.updatedAt);
  const close = () => setOpen(undefined);
  return (
    <Part title="Reference laps" ruled>
      <p>
        Times you want to be measured against, with where they come from. Of several for one combo the one
        entered or changed last counts.
      </p>
      {listed.length === 0 ? (
        <p>No reference lap yet.</p>
      ) : (
        <ul className={styles["list"]}>
          {listed.map((reference) => (
            <li key={reference.id} className={styles["row"]}>
              {open === reference.id ? (
                <ReferenceForm
                  combos={combos}
                  reference={reference}
                  preferences={preferences}
                  onClose={close}
                />
              ) : (
                <Row
                  reference={reference}
                  comboName={combos[places.get(reference.comboId) ?? 0]?.name ?? ""}
                  onEdit={() => setOpen(reference.id)}
                  onGone={() => add.current?.focus()}
                />
              )}
            </li>
          ))}
        </ul>
      )}
      {open === "new" ? (
        <ReferenceForm combos={combos} preferences={preferences} onClose={close} />
      ) : (
        <div className={styles["buttons"]}>
          <Button ref={add} size="between" onClick={() => setOpen("new")}>
            Enter a reference lap
          </Button>
        </div>
      )}
    </Part>
  );
}

interface RowProps {
  readonly reference: ReferenceLap;
  readonly comboName: string;
  readonly onEdit: () => void;
  readonly onGone: () => void;
}

function Row({ reference, comboName, onEdit, onGone }: RowProps) {
  const write = useWrite();
  const { id, ms, decimals, source } = reference;
  const time = sayLapTime(ms, decimals);
  const name = `reference lap ${time}, ${comboName}`;
  const remove = async () => {
    if (await write((book) => deleteReference(book, id), { isUndoOffered: true })) onGone();
  };
  return (
    <>
      <div>
        <p>
          <span className={styles["time"]}>{time}</span> · <Name>{comboName}</Name>
        </p>
        <p className={styles["detail"]}>
          from: <Name>{source}</Name>
        </p>
      </div>
      <div className={styles["buttons"]}>
        <Button aria-label={`Edit: ${name}`} onClick={onEdit}>
          Edit
        </Button>
        <Button variant="quiet" aria-label={`Delete: ${name}`} onClick={() => void remove()}>
          Delete
        </Button>
      </div>
    </>
  );
}
