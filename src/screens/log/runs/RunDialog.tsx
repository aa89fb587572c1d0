import { deleteRun, editRun, type RunPatch } from "#db";
import { lapsInOrder, type RigSettings, type Run, runRanges, sayDate } from "#domain";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Select } from "#ui/Select.tsx";
import { effortWords, kindWords } from "#words";
import { GiveRun } from "../putRight/GiveRun.tsx";
import { MoveLaps } from "../putRight/MoveLaps.tsx";
import { MoveRun } from "../putRight/MoveRun.tsx";
import { SplitSession } from "../putRight/SplitSession.tsx";
import type { SessionFigures } from "../session/sessionFigures.ts";
import type { SessionData } from "../session/useSession.ts";
import { OfTest } from "./OfTest.tsx";
import styles from "./RunDialog.module.css";
import { asOptions, surfaceOptions } from "./runWords.ts";
import { NoteOf, NumberOf, TextOf } from "./StoredField.tsx";

interface RunDialogProps {
  readonly data: SessionData;
  readonly run: Run;
  readonly number: number;
  /** The runs on the page, by the numbers they go by there. */
  readonly shown: SessionFigures["shown"];
  readonly onClose: () => void;
}

function rigLabel({ name, from }: RigSettings): string {
  return name === "" ? `from ${sayDate(from)}` : `${name}, from ${sayDate(from)}`;
}

/** What kind of run it was. Each change is stored at once; moving and deleting can be undone. */
export function RunDialog({ data, run, number, shown, onClose }: RunDialogProps) {
  const write = useWrite();
  const change = (patch: RunPatch) => write((book) => editRun(book, { runId: run.id, patch }));
  const remove = async () => {
    if (await write((book) => deleteRun(book, { runId: run.id }), { isUndoOffered: true })) onClose();
  };
  const isRace = run.kind === "race";
  return (
    <Dialog
      title={`Run ${number}`}
      onClose={onClose}
      actions={
        <ButtonRow
          removes={
            <Button size="between" variant="caution" onClick={remove}>
              Delete this run
            </Button>
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
        <Choice
          label="Kind"
          size="between"
          value={run.kind}
          options={asOptions(kindWords)}
          onChange={(kind) => void change({ kind })}
        />
        <Choice
          label="Effort"
          size="between"
          value={run.effort}
          options={asOptions(effortWords)}
          onChange={(effort) => void change({ effort })}
        />
        <Choice
          label="Surface"
          size="between"
          value={run.surface}
          options={surfaceOptions}
          onChange={(surface) => void change({ surface })}
        />
        <Checkbox
          size="between"
          label="Someone else is driving"
          hint="A guest's laps stay in the ledger and in no figure."
          checked={run.guest !== undefined}
          onChange={(isGuest) => void change({ guest: isGuest ? "" : undefined })}
        />
        {run.guest !== undefined && (
          <TextOf
            draftKey={`guest ${run.id}`}
            label="Their name, if wanted"
            value={run.guest}
            onStore={(guest) => change({ guest: guest ?? "" })}
          />
        )}
        {run.rigTest !== undefined && <OfTest run={run} place={run.rigTest} />}
        {run.guest !== undefined && <GiveRun run={run} onMoved={onClose} />}
        {data.rigs.length > 0 && (
          <Select
            label="Rig settings in force"
            value={run.rigId ?? ""}
            options={[
              { value: "", label: "not known" },
              ...data.rigs.map((rig) => ({ value: rig.id, label: rigLabel(rig) })),
            ]}
            onChange={(rigId) => void change({ rigId: rigId === "" ? undefined : rigId })}
          />
        )}
        <div className={styles["pair"]}>
          <TextOf
            draftKey={`tyres ${run.id}`}
            label="Tyres"
            value={run.tyres}
            onStore={(tyres) => change({ tyres })}
          />
          <TextOf
            draftKey={`setup ${run.id}`}
            label="Car's set-up"
            value={run.setup}
            onStore={(setup) => change({ setup })}
          />
          <NumberOf
            draftKey={`fuel ${run.id}`}
            label="Fuel at the start"
            unit="litres"
            value={run.fuelLitres}
            most={runRanges.fuelLitres.most}
            onStore={(fuelLitres) => change({ fuelLitres })}
          />
          <TextOf
            draftKey={`assists ${run.id}`}
            label="Assists"
            value={run.assists}
            onStore={(assists) => change({ assists })}
          />
          {isRace && (
            <NumberOf
              draftKey={`grid ${run.id}`}
              label="Grid place"
              value={run.gridPlace}
              most={runRanges.gridPlace.most}
              onStore={(gridPlace) => change({ gridPlace })}
            />
          )}
          {isRace && (
            <NumberOf
              draftKey={`finish ${run.id}`}
              label="Finish place"
              value={run.finishPlace}
              most={runRanges.finishPlace.most}
              onStore={(finishPlace) => change({ finishPlace })}
            />
          )}
          <NumberOf
            draftKey={`lapsDriven ${run.id}`}
            label="Laps driven, if not all are written"
            value={run.lapsDriven}
            most={runRanges.laps.most}
            onStore={(lapsDriven) => change({ lapsDriven })}
          />
        </div>
        <NoteOf
          draftKey={`note ${run.id}`}
          label="Note on the run"
          value={run.note}
          onStore={(note) => change({ note })}
        />
        {lapsInOrder(run).length > 1 && (
          <Disclosure title="Laps that belong elsewhere?">
            <div className={styles["form"]}>
              <MoveLaps data={data} shown={shown} run={run} onMoved={onClose} />
            </div>
          </Disclosure>
        )}
        <Disclosure title="Wrong combo or session?">
          <div className={styles["form"]}>
            <MoveRun data={data} run={run} onMoved={onClose} />
            <SplitSession data={data} run={run} number={number} onSplit={onClose} />
          </div>
        </Disclosure>
      </div>
    </Dialog>
  );
}
