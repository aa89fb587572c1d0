import { useState } from "react";
import { editLap } from "#db";
import { formatLapTime, type Id, type Lap, type RemarkKind, remarkKinds } from "#domain";
import { useWrite } from "#live";
import type { PointedAtFor } from "#stats";
import { Button } from "#ui/Button.tsx";
import { Select } from "#ui/Select.tsx";
import styles from "./MarkLap.module.css";

interface MarkLapProps {
  /** Its number among the pace laps. */
  readonly number: number;
  readonly reasons: readonly PointedAtFor[];
  readonly lap: Lap;
  readonly runId: Id;
}

const spoiling = remarkKinds.filter(({ spoils }) => spoils);
/** What it was most often. */
const likely: RemarkKind = "off";

/** A pointed-at lap: the driver says what it was, or leaves it a pace lap like the others. */
export function MarkLap({ number, reasons, lap, runId }: MarkLapProps) {
  const write = useWrite();
  const [kind, setKind] = useState(likely);
  const mark = () =>
    write(
      (book) =>
        editLap(book, {
          runId,
          lapId: lap.id,
          patch: { remarks: [...lap.remarks, { kind }] },
          expected: lap,
        }),
      { isUndoOffered: true },
    );
  const name = `Lap ${number}, ${lap.ms === undefined ? "no time" : formatLapTime(lap.ms, lap.decimals)}`;
  const isStretch = reasons.every((reason) => reason === "eight in a row on one side");
  if (isStretch)
    return (
      <div className={styles["lap"]}>
        <p>{name}: the end of eight in a row on one side of the mean, a stretch rather than a single lap.</p>
      </div>
    );
  return (
    <div className={styles["lap"]}>
      <p>
        {name}: {reasons.join(", ")}. Left as it is, it counts.
      </p>
      <Select
        label={`What lap ${number} was`}
        value={kind}
        onChange={setKind}
        options={spoiling.map((remark) => ({ value: remark.kind, label: remark.word }))}
      />
      <Button onClick={mark}>Mark lap {number}</Button>
    </div>
  );
}
