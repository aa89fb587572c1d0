import { useState } from "react";
import { keepSetting, rigs } from "#db";
import { type CalendarDate, rigOn } from "#domain";
import { type RigTestPage, useLogbook, useRows, useWrite } from "#live";
import { printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { type SaidSides, sayKeptNote, saySide } from "#words";
import { recordOfKept } from "./recordOfKept.ts";
import styles from "./Test.module.css";

interface KeepSettingProps {
  readonly page: RigTestPage;
  readonly sides: SaidSides;
  readonly today: CalendarDate;
}

/** The choice after a test: which setting stays on. It begins a record where the rig is another from then on. */
export function KeepSetting({ page: { test, report }, sides, today }: KeepSettingProps) {
  const write = useWrite();
  const { surroundings } = useLogbook();
  // One until the choice is another, so that pressing twice makes no second record.
  const [newId] = useState(() => surroundings.newId());
  const records = useRows(rigs, []);
  if (records === undefined) return null;
  const inForce = rigOn(records, today);
  const keep = (side: "A" | "B") => {
    const note = sayKeptNote(report, { ...test, ...sides });
    const rig = recordOfKept({ test, side, sides, inForce, today, note });
    void write(
      (book) => keepSetting(book, { testId: test.id, side, ...(rig && { rig: { ...rig, id: newId } }) }),
      { isUndoOffered: true },
    );
  };
  const { kept } = test;
  if (kept !== undefined) {
    const rigId = kept === "A" ? test.rigA : test.rigB;
    const other = kept === "A" ? "B" : "A";
    return (
      <p className={styles["keep"]}>
        <span>
          Kept: <Name>{saySide(sides, kept)}</Name>.{" "}
          {records.some(({ id }) => id === rigId) && (
            <a className={styles["date"]} href={printAddress({ place: "rig", ...(rigId && { rigId }) })}>
              Its record
            </a>
          )}
        </span>
        <Button size="between" variant="quiet" onClick={() => keep(other)}>
          Keep {other} instead
        </Button>
      </p>
    );
  }
  return (
    <section aria-label="Which setting stays on" className={styles["keep"]}>
      {(["B", "A"] as const).map((side) => (
        <Button key={side} size="between" onClick={() => keep(side)}>
          Keep {saySide(sides, side)}
        </Button>
      ))}
    </section>
  );
}
