import { useState } from "react";
import { deleteRun, editRun, type RunPatch } from "#db";
import type { Run } from "#domain";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Field } from "#ui/Field.tsx";
import { Select } from "#ui/Select.tsx";
import { MoveRun } from "./MoveRun.tsx";
import { wholeNumber } from "./numbers.ts";
import styles from "./RunDialog.module.css";
import { asOptions, effortWords, kindWords, surfaceOptions } from "./runWords.ts";
import type { SessionData } from "./useSession.ts";

interface RunDialogProps {
  readonly data: SessionData;
  readonly run: Run;
  readonly number: number;
  readonly onClose: () => void;
}

/** What kind of run it was. Each change is stored at once; moving and deleting can be undone. */
export function RunDialog({ data, run, number, onClose }: RunDialogProps) {
  const write = useWrite();
  const change = (patch: RunPatch) => void write((book) => editRun(book, { runId: run.id, patch }));
  const remove = async () => {
    if (await write((book) => deleteRun(book, { runId: run.id }), { isUndoOffered: true })) onClose();
  };
  const isRace = run.kind === "race";
  return (
    <Dialog
      title={`Run ${number}`}
      onClose={onClose}
      actions={
        <>
          <Button size="between" variant="primary" onClick={onClose}>
            Done
          </Button>
          <Button size="between" variant="caution" onClick={remove}>
            Delete this run
          </Button>
        </>
      }
    >
      <div className={styles["form"]}>
        <Choice
          label="Kind"
          size="between"
          value={run.kind}
          options={asOptions(kindWords)}
          onChange={(kind) => change({ kind })}
        />
        <Choice
          label="Effort"
          size="between"
          value={run.effort}
          options={asOptions(effortWords)}
          onChange={(effort) => change({ effort })}
        />
        <Choice
          label="Surface"
          size="between"
          value={run.surface}
          options={surfaceOptions}
          onChange={(surface) => change({ surface })}
        />
        <Checkbox
          size="between"
          label="Someone else is driving"
          hint="A guest's laps stay in the ledger and in no figure."
          checked={run.guest !== undefined}
          onChange={(isGuest) => change({ guest: isGuest ? "" : undefined })}
        />
        {run.guest !== undefined && (
          <TextOf
            label="Their name, if wanted"
            value={run.guest}
            onStore={(guest) => change({ guest: guest ?? "" })}
          />
        )}
        {data.rigs.length > 0 && (
          <Select
            label="Rig settings in force"
            value={run.rigId ?? ""}
            options={[
              { value: "", label: "not known" },
              ...data.rigs.map((rig) => ({ value: rig.id, label: `${rig.name}, from ${rig.from}` })),
            ]}
            onChange={(rigId) => change({ rigId: rigId === "" ? undefined : rigId })}
          />
        )}
        <div className={styles["pair"]}>
          <TextOf label="Tyres" value={run.tyres} onStore={(tyres) => change({ tyres })} />
          <TextOf label="Car's set-up" value={run.setup} onStore={(setup) => change({ setup })} />
          <NumberOf
            label="Fuel at the start"
            unit="litres"
            value={run.fuelLitres}
            most={1000}
            onStore={(fuelLitres) => change({ fuelLitres })}
          />
          <TextOf label="Assists" value={run.assists} onStore={(assists) => change({ assists })} />
          {isRace && (
            <NumberOf
              label="Grid place"
              value={run.gridPlace}
              most={999}
              onStore={(gridPlace) => change({ gridPlace })}
            />
          )}
          {isRace && (
            <NumberOf
              label="Finish place"
              value={run.finishPlace}
              most={999}
              onStore={(finishPlace) => change({ finishPlace })}
            />
          )}
          <NumberOf
            label="Laps driven, if not all are written"
            value={run.lapsDriven}
            most={9999}
            onStore={(lapsDriven) => change({ lapsDriven })}
          />
        </div>
        <TextOf label="Note on the run" value={run.note} onStore={(note) => change({ note: note ?? "" })} />
        <Disclosure title="Wrong combo or session?">
          <MoveRun data={data} run={run} onMoved={onClose} />
        </Disclosure>
      </div>
    </Dialog>
  );
}

interface TextOfProps {
  readonly label: string;
  readonly value: string | undefined;
  readonly onStore: (value: string | undefined) => void;
}

/** A text stored when the field is left. */
function TextOf({ label, value, onStore }: TextOfProps) {
  const [text, setText] = useState(value ?? "");
  return (
    <Field
      label={label}
      value={text}
      maxLength={2000}
      onChange={setText}
      onBlur={() => text.trim() !== (value ?? "") && onStore(text.trim() === "" ? undefined : text.trim())}
    />
  );
}

interface NumberOfProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly unit?: string;
  readonly most: number;
  readonly onStore: (value: number | undefined) => void;
}

/** A whole number stored when the field is left, where it is one. */
function NumberOf({ label, value, unit, most, onStore }: NumberOfProps) {
  const [text, setText] = useState(value === undefined ? "" : String(value));
  const read = wholeNumber(text, label, most);
  return (
    <Field
      label={label}
      value={text}
      unit={unit}
      inputMode="numeric"
      onChange={setText}
      problem={read.ok ? undefined : read.problem}
      onBlur={() => read.ok && read.value !== value && onStore(read.value)}
    />
  );
}
