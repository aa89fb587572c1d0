import { type FocusEvent, useEffect, useRef, useState } from "react";
import { bends, straights } from "#domain";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Field } from "#ui/Field.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { Name } from "#ui/Name.tsx";
import { asSentence } from "#words";
import styles from "./CornerForms.module.css";
import { type CornerCell, cornerCells, plainCells, unitOf } from "./cornerCells.ts";
import type { CornerRow } from "./cornerRows.ts";
import { cellWords } from "./cornerWords.ts";
import type { CornerRows } from "./useCornerRows.ts";

/** The corners of a layout on a phone: each opens from its number as a form, and is stored when it is left. */
export function CornerForms({ table }: { readonly table: CornerRows }) {
  const [open, setOpen] = useState<string>();
  const { rows } = table;
  const close = (row: CornerRow) => {
    setOpen(undefined);
    document.getElementById(openerId(row.key))?.focus();
  };
  return (
    <ul className={styles["rows"]}>
      {rows.map((row, at) => (
        <li key={row.key} className={styles["row"]} data-chain={row.chain}>
          <button
            type="button"
            id={openerId(row.key)}
            aria-expanded={row.key === open}
            className={styles["open"]}
            onClick={() => setOpen(row.key === open ? undefined : row.key)}
          >
            <Summary row={row} />
          </button>
          {row.key === open ? (
            <CornerForm
              row={row}
              table={table}
              onDone={() => close(row)}
              onNext={() => setOpen(rows[at + 1]?.key)}
            />
          ) : (
            <Problems row={row} />
          )}
        </li>
      ))}
    </ul>
  );
}

/** The button that opens a corner. */
const openerId = (key: string) => `open-corner-${key}`;

/** "5 Church" and "right · hairpin · then long" */
function Summary({ row: { corner, isTyped, texts, reading } }: { readonly row: CornerRow }) {
  const now = (cell: CornerCell) => reading.said[cell] ?? texts[cell];
  if (corner === undefined && !isTyped)
    return <span className={styles["number"]}>Add corner {texts.number}</span>;
  const after = now("after");
  const facts = [
    now("direction"),
    now("bend"),
    after && `then ${after === "none" ? "the next at once" : after}`,
  ];
  return (
    <>
      <span className={styles["number"]}>{texts.number}</span>
      <span className={styles["words"]}>
        {texts.name !== "" && <Name>{texts.name}</Name>}
        <span className={styles["facts"]}>{facts.filter((fact) => fact !== "").join(" · ")}</span>
      </span>
    </>
  );
}

function Problems({ row: { reading } }: { readonly row: CornerRow }) {
  const problems = cornerCells.flatMap((cell) => reading.problems[cell] ?? []);
  return problems.map((problem) => (
    <p key={sayProblem(problem)} className={styles["problem"]}>
      Not stored. {sayProblem(problem)}
    </p>
  ));
}

interface CornerFormProps {
  readonly row: CornerRow;
  readonly table: CornerRows;
  readonly onDone: () => void;
  readonly onNext: () => void;
}

const notSaid = { value: "", label: "not said" } as const;
const options = (words: readonly string[]) => [...words.map((value) => ({ value, label: value })), notSaid];
const choices = {
  direction: options(["left", "right"]),
  bend: options(bends),
  after: options(straights),
} as const;
const measured = cornerCells.filter((cell) => !plainCells.includes(cell));

function CornerForm({ row, table, onDone, onNext }: CornerFormProps) {
  const { store, remove } = table;
  const { key, corner, texts, reading } = row;
  const [isRefused, setRefused] = useState(false);
  // The number stands at the top, with as much of its form in sight as there is room for.
  useEffect(() => {
    const opener = document.getElementById(openerId(key));
    opener?.focus({ preventScroll: true });
    opener?.scrollIntoView?.({ block: "start" });
  }, [key]);
  // Whoever leaves the form by another corner's number leaves no focus behind to tell it by.
  const leave = useRef(() => store(key));
  leave.current = () => store(key);
  useEffect(() => () => leave.current(), []);
  const onBlur = ({ relatedTarget, currentTarget }: FocusEvent<HTMLElement>) => {
    if (!(relatedTarget instanceof Node && currentTarget.contains(relatedTarget))) store(key);
  };
  const isWrong = Object.keys(reading.problems).length > 0;
  const field = (cell: CornerCell) => (
    <CornerField key={cell} row={row} cell={cell} table={table} isRefused={isRefused} />
  );
  const isMeasured = measured.some((cell) => texts[cell] !== "");
  return (
    <form
      noValidate
      aria-label={`Corner ${texts.number}`}
      className={styles["form"]}
      onBlur={onBlur}
      onSubmit={(event) => {
        event.preventDefault();
        setRefused(isWrong);
        if (isWrong) return;
        store(key, true);
        onNext();
      }}
    >
      {corner === undefined && field("number")}
      {field("name")}
      {field("direction")}
      {field("bend")}
      {field("after")}
      {field("sector")}
      <Disclosure title="Measured values" startOpen={isMeasured} level={3}>
        <div className={styles["fields"]}>{measured.map(field)}</div>
      </Disclosure>
      <ButtonRow
        removes={
          (corner !== undefined || row.isTyped) && (
            <Button
              variant="caution"
              size="between"
              onClick={() => void remove(row).then((isGone) => isGone && onDone())}
            >
              Remove
            </Button>
          )
        }
        others={
          <Button size="between" onClick={onDone}>
            Done
          </Button>
        }
        main={
          <Button type="submit" variant="primary" size="between">
            Next corner
          </Button>
        }
      />
    </form>
  );
}

interface CornerFieldProps {
  readonly row: CornerRow;
  readonly cell: CornerCell;
  readonly table: CornerRows;
  readonly isRefused: boolean;
}

function CornerField({ row, cell, table, isRefused }: CornerFieldProps) {
  const [isLeft, setLeft] = useState(false);
  const { label, hint } = cellWords[cell];
  const { texts, reading } = row;
  const onChange = (text: string) => table.type(row, cell, text);
  const problem = isLeft || isRefused ? reading.problems[cell] : undefined;
  const ties = { size: "between", problem, onChange } as const;
  const said = reading.said[cell] ?? texts[cell];
  if (cell === "direction" || cell === "bend")
    return <Choice {...ties} label={label} options={choices[cell]} value={said} />;
  const isWord = choices.after.some(({ value }) => value === said);
  const input = (
    <Field
      {...ties}
      label={cell === "after" ? "Or its length" : label}
      unit={unitOf(cell) || undefined}
      figures={cell !== "name"}
      inputMode={cell === "name" ? undefined : "decimal"}
      dir={cell === "name" ? "auto" : undefined}
      hint={cell === "speed" ? asSentence(hint) : undefined}
      value={cell === "after" && isWord ? "" : texts[cell]}
      onFocus={() => setLeft(false)}
      onBlur={() => setLeft(true)}
    />
  );
  if (cell !== "after") return input;
  return (
    <>
      <Choice
        size="between"
        label={label}
        options={choices.after}
        value={isWord ? said : undefined}
        onChange={onChange}
      />
      {input}
    </>
  );
}
