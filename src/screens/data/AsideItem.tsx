import { useId, useState } from "react";
import { asideFault, mendAside } from "#db";
import type { AsideRow, Problem } from "#domain";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { asideThing } from "#words";
import { fieldAt, fieldText, readingsOf, withField } from "./asideFields.ts";
import { DropAsideDialog } from "./DropAsideDialog.tsx";
import styles from "./LogbooksPart.module.css";

type Fields = Readonly<Record<string, unknown>>;
type Said = Pick<Problem, "wrong" | "right">;

/** One row set aside: what it is, the field that is wrong and what it holds, and the ways to deal with it. */
export function AsideItem({ aside }: { readonly aside: AsideRow }) {
  const write = useWrite();
  const id = useId();
  const [row, setRow] = useState<Fields>(aside.row ?? {});
  const fault = asideFault(aside, row);
  const field = fault?.field;
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState<Said>();
  const [isDropping, setDropping] = useState(false);

  /** Puts a corrected row back, or goes on to what else is wrong with it. */
  const goOn = async (next: Fields) => {
    setRow(next);
    setTyped(undefined);
    setProblem(undefined);
    if (asideFault(aside, next) !== undefined) return;
    await write((book) => mendAside(book, { aside, row: next }), {
      isUndoOffered: true,
      onFault: ({ message }) =>
        setProblem({ wrong: message, right: "Mend or restore what it belongs to first, or delete it" }),
    });
  };
  const isStillWrong = (next: Fields) => asideFault(aside, next)?.field === field;
  const putBack = () => {
    if (field === undefined) return void goOn(row);
    const text = typed ?? fieldText(fieldAt(row, field));
    const readings = readingsOf(text).map((value) => withField(row, field, value));
    const right = readings.find((next) => !isStillWrong(next));
    if (right !== undefined) return void goOn(right);
    const why = asideFault(aside, readings[0] ?? row)?.why ?? fault?.why ?? "";
    return setProblem({ wrong: `“${text}” is not right: ${why}`, right: "Write what it should be" });
  };
  const without = field === undefined ? row : withField(row, field, undefined);
  const mayGo = field !== undefined && fieldAt(row, field) !== undefined && !isStillWrong(without);
  const isHopeless = fault !== undefined && field === undefined;
  return (
    <li className={styles["logbook"]}>
      <div id={id} className={styles["whole"]}>
        <div className={styles["title"]}>
          <bdi>{asideThing(aside)}</bdi>
        </div>
        <div className={styles["about"]}>
          {field === undefined
            ? (fault?.why ?? `set aside because: ${aside.why}`)
            : `${field}: ${fault?.why}. Stored: ${fieldText(fieldAt(row, field)) || "nothing"}`}
        </div>
        {field === undefined && problem !== undefined && (
          <p role="alert">
            {problem.wrong} {problem.right}.
          </p>
        )}
        {field !== undefined && (
          <Field
            label={`What ${field} should be`}
            value={typed ?? fieldText(fieldAt(row, field))}
            onChange={(text) => {
              setTyped(text);
              setProblem(undefined);
            }}
            problem={problem}
            size="between"
          />
        )}
      </div>
      <div className={styles["buttons"]}>
        {!isHopeless && (
          <Button size="between" onClick={putBack} aria-describedby={id}>
            Put back
          </Button>
        )}
        {mayGo && (
          <Button size="between" onClick={() => void goOn(without)} aria-describedby={id}>
            Put back without {field}
          </Button>
        )}
        <Button size="between" onClick={() => setDropping(true)} aria-describedby={id}>
          Delete for good
        </Button>
      </div>
      {isDropping && <DropAsideDialog aside={aside} onClose={() => setDropping(false)} />}
    </li>
  );
}
