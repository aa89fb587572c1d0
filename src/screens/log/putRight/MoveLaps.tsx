import { useState } from "react";
import { combosWithNames, moveLaps, moveLapsToCombo, sessionsOfCombo } from "#db";
import { comboName, lapsInOrder, type Run, sayDate } from "#domain";
import { useRows, useWrite } from "#live";
import { Field } from "#ui/Field.tsx";
import { counted } from "#words";
import { lapSpan } from "../laps/lapSpan.ts";
import styles from "../runs/RunDialog.module.css";
import type { SessionFigures } from "../session/sessionFigures.ts";
import type { SessionData } from "../session/useSession.ts";
import { PickAndDo } from "./PickAndDo.tsx";

const sessionsOffered = 30;

interface MoveLapsProps {
  readonly data: SessionData;
  /** The runs on the page, by the numbers they go by there. */
  readonly shown: SessionFigures["shown"];
  readonly run: Run;
  readonly onMoved: () => void;
}

/** Moves laps that follow each other to another run, session or combo. */
export function MoveLaps({ data, shown, run, onMoved }: MoveLapsProps) {
  const write = useWrite();
  const { session, combo } = data;
  const laps = lapsInOrder(run);
  const [first, setFirst] = useState("");
  const [last, setLast] = useState("");
  const span = lapSpan(first, last, laps.length);
  const isAsked = first.trim() !== "" || last.trim() !== "";
  const sessions = useRows((book) => sessionsOfCombo(book, combo.id), [combo.id]) ?? [];
  const combos = useRows((book) => combosWithNames(book), []) ?? [];
  const places = [
    ...shown
      .filter((other) => other.run.id !== run.id && other.run.summary === undefined)
      .map((other) => ({ value: `run ${other.run.id}`, label: `run ${other.number}` })),
    { value: `session ${session.id}`, label: "a new run of this session" },
    ...sessions
      .filter(({ id }) => id !== session.id)
      .slice(-sessionsOffered)
      .reverse()
      .map(({ id, date }) => ({ value: `session ${id}`, label: `this combo, ${sayDate(date)}` })),
    ...combos
      .filter((other) => other.combo.id !== combo.id)
      .map((other) => ({ value: `combo ${other.combo.id}`, label: `${comboName(other)}, same date` })),
  ];
  const move = async (place: string) => {
    if (!span.ok) return;
    const lapIds = laps.slice(span.first - 1, span.last).map(({ id }) => id);
    const [kind, id = ""] = place.split(" ");
    const from = { from: run.id, lapIds };
    const change = await write(
      (book) =>
        kind === "combo"
          ? moveLapsToCombo(book, { ...from, comboId: id })
          : moveLaps(book, { ...from, to: kind === "run" ? { runId: id } : { newRunIn: id } }),
      { isUndoOffered: true },
    );
    if (change) onMoved();
  };
  return (
    <>
      <div className={styles["pair"]}>
        <Field
          label="First lap to move"
          value={first}
          inputMode="numeric"
          onChange={setFirst}
          problem={isAsked && !span.ok && span.at === "first" ? span.problem : undefined}
        />
        <Field
          label="Last lap to move"
          value={last}
          inputMode="numeric"
          onChange={setLast}
          hint={`Leave it empty for all to the end, lap ${laps.length}.`}
          problem={isAsked && !span.ok && span.at === "last" ? span.problem : undefined}
        />
      </div>
      <PickAndDo
        label="Where to"
        prompt="choose a run, session or combo"
        none=""
        options={places}
        deed={span.ok ? `Move ${counted(span.last - span.first + 1, "lap")}` : "Move"}
        isReady={span.ok}
        onDo={move}
      />
    </>
  );
}
