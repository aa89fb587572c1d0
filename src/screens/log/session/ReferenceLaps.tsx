import { addReference, type Change, deleteReference } from "#db";
import { formatLapTime, longestSource } from "#domain";
import { type ReadReferenceLap, readReferenceLap, type TypedReferenceLap } from "#entry";
import { useDraft, useWrite, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Name } from "#ui/Name.tsx";
import dialog from "../runs/RunDialog.module.css";
import styles from "./ReferenceLaps.module.css";
import type { SessionData } from "./useSession.ts";

const blank: TypedReferenceLap = { time: "", source: "" };

/** Times the driver wants to be measured against on this combo, with where they come from. */
export function ReferenceLaps({ data }: { readonly data: SessionData }) {
  const { combo, references, preferences } = data;
  const write = useWrite();
  const draft = useDraft(`reference ${combo.id}`, blank);
  const { box, field, submit } = useWriteForm<TypedReferenceLap, ReadReferenceLap, Change, HTMLDivElement>({
    typed: draft,
    reading: readReferenceLap(draft.value, preferences.displayDecimals),
    write: (book, read) => addReference(book, { comboId: combo.id, ...read }),
    isUndoOffered: true,
  });
  return (
    <>
      <p>
        Laps are measured against the newest of these while there is neither a target of the day nor a target.
      </p>
      {references.length > 0 && (
        <ul className={styles["list"]} aria-label="Reference laps">
          {references.map((reference) => (
            <li key={reference.id} className={styles["row"]}>
              <strong className={styles["time"]}>{formatLapTime(reference.ms, reference.decimals)}</strong>
              <span className={styles["source"]}>
                <Name>{reference.source}</Name>
              </span>
              <Button
                size="between"
                variant="quiet"
                aria-label={`Delete the reference lap ${formatLapTime(reference.ms, reference.decimals)}`}
                onClick={() =>
                  void write((book) => deleteReference(book, reference.id), { isUndoOffered: true })
                }
              >
                Delete
              </Button>
            </li>
          ))}
        </ul>
      )}
      <HalfTyped of={draft} />
      <div ref={box} className={dialog["form"]}>
        <Field label="Time of the reference lap" inputMode="decimal" hint="1:23.000" {...field("time")} />
        <Field
          label="Where it comes from"
          maxLength={longestSource}
          hint="For example: Jo, same car, October"
          {...field("source")}
        />
        <Button size="between" onClick={submit}>
          Add the reference lap
        </Button>
      </div>
    </>
  );
}
