import { useState } from "react";
import type { CalendarDate } from "#domain";
import { useLogbook } from "#live";
import { type Column, type Row, RuledTable } from "#ui/RuledTable.tsx";
import { AheadQuestion } from "./AheadQuestion.tsx";
import { BadRows } from "./BadRows.tsx";
import { BothEditedTable } from "./BothEditedTable.tsx";
import { mergeRowsInWords } from "./mergeWords.ts";
import styles from "./Restore.module.css";
import { WayButtons } from "./WayButtons.tsx";
import { type WayProps, withoutBad } from "./wayProps.ts";

const columns: readonly Column[] = [
  { key: "what", title: "in the open logbook" },
  { key: "added", title: "new", figures: true },
  { key: "changed", title: "changed", figures: true },
  { key: "deleted", title: "deleted", figures: true },
  { key: "broughtBack", title: "brought back", figures: true },
  { key: "unchanged", title: "as it was", figures: true },
];

/** Columns without a figure are left out, so that the table fits a phone. */
const isUsed = (rows: readonly Row[]) => (column: Column) =>
  rows.some(({ cells }) => cells[column.key] !== "");

/** A backup is merged into the open logbook, after all it would change has been shown. */
export function MergeWay(props: WayProps & { readonly madeOn: CalendarDate | undefined }) {
  const { file, incoming, onLeave, madeOn } = props;
  const { counts, both, bad, ahead } = file.preview.merging;
  const { surroundings } = useLogbook();
  const [isDateConfirmed, setDateConfirmed] = useState(false);
  const [isAsked, setAsked] = useState(false);
  const rows = mergeRowsInWords(counts);
  const from = madeOn === undefined ? file.name : `backup of ${madeOn}`;
  const begin = async () => {
    if (ahead !== undefined && !isDateConfirmed) return setAsked(true);
    if (await incoming.merge(file.source, from, isDateConfirmed)) onLeave();
  };
  return (
    <form
      className={styles["preview"]}
      onSubmit={(event) => {
        event.preventDefault();
        void begin();
      }}
    >
      {rows.length === 0 ? (
        <p>
          <strong>Nothing would change:</strong> all of it is in the open logbook already.
        </p>
      ) : (
        <RuledTable
          caption="What the merge would change"
          captionHidden
          columns={columns.filter(isUsed(rows))}
          rows={rows}
        />
      )}
      {both.all > 0 && <BothEditedTable both={both} />}
      {bad.all > 0 && <BadRows bad={bad} />}
      {ahead !== undefined && (
        <AheadQuestion
          ahead={ahead}
          surroundings={surroundings}
          isConfirmed={isDateConfirmed}
          isMissed={isAsked && !isDateConfirmed}
          onChange={setDateConfirmed}
        />
      )}
      <WayButtons
        incoming={incoming}
        act={withoutBad("Merge", "Merge into the open logbook", bad.all)}
        doing="Merging"
        onCancel={onLeave}
      />
    </form>
  );
}
