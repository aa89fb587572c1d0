import { useState } from "react";
import { addReference, deleteReference } from "#db";
import { formatLapTime } from "#domain";
import { readTime } from "#entry";
import { useDraft, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Name } from "#ui/Name.tsx";
import styles from "./ReferenceLaps.module.css";
import type { SessionData } from "./useSession.ts";

const blank = { time: "", source: "" };

/** Times the driver wants to be measured against on this combo, with where they come from. */
export function ReferenceLaps({ data }: { readonly data: SessionData }) {
  const { combo, references, preferences } = data;
  const write = useWrite();
  const draft = useDraft(`reference ${combo.id}`, blank);
  const [isRefused, setRefused] = useState(false);
  const { time, source } = draft.value;
  const set = (patch: Partial<typeof blank>) => {
    setRefused(false);
    draft.set({ ...draft.value, ...patch });
  };
  const read = readTime(time, { displayDecimals: preferences.displayDecimals });
  const isFrom = source.trim() !== "";
  const add = async () => {
    if (!read.ok || !isFrom) return setRefused(true);
    const { ms, decimals } = read;
    const change = await write(
      (book) => addReference(book, { comboId: combo.id, ms, decimals, source: source.trim() }),
      { isUndoOffered: true },
    );
    if (change) draft.set(undefined);
  };
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
      <Field
        label="Time of the reference lap"
        value={time}
        inputMode="decimal"
        onChange={(text) => set({ time: text })}
        hint="1:23.000"
        problem={isRefused && !read.ok ? read.problem : undefined}
      />
      <Field
        label="Where it comes from"
        value={source}
        maxLength={500}
        onChange={(text) => set({ source: text })}
        hint="For example: Jo, same car, October"
        problem={isRefused && !isFrom ? "Write where the time comes from." : undefined}
      />
      <Button size="between" onClick={add}>
        Add the reference lap
      </Button>
    </>
  );
}
