import { useMemo, useState } from "react";
import { type ComboWithNames, importLaps, type LikelyName } from "#db";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Name } from "#ui/Name.tsx";
import { ColumnMatch } from "./ColumnMatch.tsx";
import styles from "./Import.module.css";
import { ImportTables } from "./ImportTables.tsx";
import { importSize } from "./importSize.ts";
import type { ImportSource } from "./importSource.ts";
import { counted, sayFound, sayGuests, sayNew } from "./importWords.ts";
import { LikelyNames } from "./LikelyNames.tsx";
import { keyOfLikely } from "./likelyAnswers.ts";
import { TableFormFields } from "./TableFormFields.tsx";
import { useImport } from "./useImport.ts";
import { WholeTableFields } from "./WholeTableFields.tsx";

interface ImportPreviewProps {
  readonly source: ImportSource;
  readonly combos: readonly ComboWithNames[];
  readonly onDone: () => void;
}

/** From a text to laps: how it is read, what its columns hold, what would be stored. Nothing is, until asked for. */
export function ImportPreview({ source, combos, onDone }: ImportPreviewProps) {
  const known = useMemo(
    () => ({ cars: combos.map(({ car }) => car.name), tracks: combos.map(({ track }) => track.name) }),
    [combos],
  );
  const all = useImport(source.text, known);
  const { table, read, sessions, repeated, odd, outlook } = all;
  const [takesKnown, setTakesKnown] = useState(false);
  const [isBusy, setBusy] = useState(false);
  const write = useWrite();
  const there = [...(outlook?.known.values() ?? [])].reduce((sum, count) => sum + count, 0);
  const far = odd?.size ?? 0;
  const laps = read.laps.length - repeated - (all.leavesOdd ? far : 0);
  const fresh = takesKnown ? laps : laps - there;
  const add = async () => {
    setBusy(true);
    const change = await write((book) => importLaps(book, { sessions, takesKnown }), {
      isUndoOffered: true,
      bytes: () => importSize(sessions),
    });
    setBusy(false);
    if (change === undefined) return;
    all.remember();
    onDone();
  };
  // What is still asked about is neither new nor known.
  const isSettled = (kind: LikelyName["kind"]) => (name: string) =>
    !all.likely.some((one) => one.kind === kind && one.name === name && !all.answers.has(keyOfLikely(one)));
  const news =
    outlook && sayNew(outlook.newCars.filter(isSettled("car")), outlook.newTracks.filter(isSettled("track")));
  return (
    <div className={styles["parts"]}>
      <p>
        {source.file === undefined ? "The pasted text" : <Name>{source.file}</Name>}:{" "}
        {counted(table.rows.length, "row")}. {source.about}
      </p>
      <div>
        <h3>How it is written</h3>
        <TableFormFields table={table} onForm={all.setForm} />
      </div>
      <div>
        <h3>What the columns hold</h3>
        <ColumnMatch table={table} onColumn={all.setColumn} />
      </div>
      <WholeTableFields
        columns={table.form.columns}
        combos={combos}
        typed={all.typed}
        onTyped={all.setTyped}
        dateProblem={all.dateProblem}
      />
      <LikelyNames likely={all.likely} answers={all.answers} onAnswer={all.answer} />
      <div className={styles["stack"]}>
        <h3>What becomes of it</h3>
        <div role="status">
          <p>
            <strong>{sayFound(laps, sessions)}</strong>{" "}
            {read.unread.length > 0 && `${counted(read.unread.length, "row")} not read. `}
            {there > 0 && `${counted(there, "lap is", "laps are")} in this logbook already. `}
            {repeated > 0 && `${counted(repeated, "row repeats", "rows repeat")} a lap of the table. `}
            {read.mayBeCut && "The table may break off in its last line: look whether that lap is whole. "}
            {far > 0 && `${counted(far, "lap lies", "laps lie")} far from what is usual. `}
            {sayGuests(read.laps)} {news}
          </p>
        </div>
        {far > 0 && (
          <Checkbox
            size="between"
            label="Leave out the laps far from what is usual"
            checked={all.leavesOdd}
            onChange={all.setLeavesOdd}
          />
        )}
        {there > 0 && (
          <Checkbox
            size="between"
            label="Import laps that are there already a second time"
            checked={takesKnown}
            onChange={setTakesKnown}
          />
        )}
        <ImportTables read={read} odd={odd} />
      </div>
      <ButtonRow
        others={
          <Button size="between" onClick={onDone}>
            Cancel
          </Button>
        }
        main={
          <Button
            variant="primary"
            size="between"
            disabled={isBusy || fresh === 0 || outlook === undefined || odd === undefined || all.isAsking}
            onClick={() => void add()}
          >
            {fresh === 0
              ? "Nothing to import"
              : all.isAsking
                ? "Say first which names are the same"
                : `Import ${counted(fresh, "lap")}`}
          </Button>
        }
      />
    </div>
  );
}
