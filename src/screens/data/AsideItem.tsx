import { useId, useState } from "react";
import { asideFault, asideLinkFault, mendAside, namedChoices } from "#db";
import type { AsideRow, Problem } from "#domain";
import { useLogbook, useRows, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { asideThing } from "#words";
import { AsideLink } from "./AsideLink.tsx";
import { fieldAt, fieldText, readingsOf, withField } from "./asideFields.ts";
import { DropAsideDialog } from "./DropAsideDialog.tsx";
import styles from "./LogbooksPart.module.css";

type Fields = Readonly<Record<string, unknown>>;
type Said = Pick<Problem, "wrong" | "right">;

/** One row set aside: what it is, the field or the link that is wrong, and the ways to deal with it. */
export function AsideItem({ aside }: { readonly aside: AsideRow }) {
  const write = useWrite();
  const { book: here } = useLogbook();
  const id = useId();
  const [row, setRow] = useState<Fields>(aside.row ?? {});
  const fault = asideFault(aside, row);
  const field = fault?.field;
  const broken = useRows((book) => asideLinkFault(book, aside, row), [aside, row]);
  const link = broken?.link;
  const to = broken?.isNamedAside ? undefined : link?.to;
  const choices = useRows(async (book) => (to === undefined ? [] : namedChoices(book, to)), [to]);
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState<Said>();
  const [isDropping, setDropping] = useState(false);

  /** Puts a corrected row back, or goes on to what else is wrong with it. */
  const goOn = async (next: Fields) => {
    setRow(next);
    setTyped(undefined);
    setProblem(undefined);
    if (asideFault(aside, next) !== undefined || (await asideLinkFault(here, aside, next))) return;
    await write((book) => mendAside(book, { aside, row: next }), {
      isUndoOffered: true,
      onFault: ({ message }) =>
        setProblem({ wrong: message, right: "Mend or restore what it belongs to first, or delete it" }),
    });
  };
  const isStillWrong = (next: Fields) => asideFault(aside, next)?.field === field;
  const putBack = () => {
    if (link !== undefined) {
      if (typed !== undefined && typed !== "") return void goOn(withField(row, link.field, typed));
      return setProblem({
        wrong: `No ${link.word} is chosen`,
        right: `Choose the ${link.word} it belongs to`,
      });
    }
    if (field === undefined) return void goOn(row);
    const text = typed ?? fieldText(fieldAt(row, field));
    const readings = readingsOf(text).map((value) => withField(row, field, value));
    const right = readings.find((next) => !isStillWrong(next));
    if (right !== undefined) return void goOn(right);
    const why = asideFault(aside, readings[0] ?? row)?.why ?? fault?.why ?? "";
    return setProblem({ wrong: `“${text}” is not right: ${why}`, right: "Write what it should be" });
  };
  const path = field ?? link?.field;
  const without = path === undefined ? row : withField(row, path, undefined);
  const mayGo =
    path !== undefined &&
    fieldAt(row, path) !== undefined &&
    (field === undefined ? asideFault(aside, without) === undefined : !isStillWrong(without));
  const isHopeless =
    field === undefined && (fault !== undefined || (broken !== undefined && choices?.length === 0));
  const about =
    field === undefined
      ? (fault?.why ?? broken?.why ?? `set aside because: ${aside.why}`)
      : `${field}: ${fault?.why}. Stored: ${fieldText(fieldAt(row, field)) || "nothing"}`;
  const change = (text: string) => {
    setTyped(text);
    setProblem(undefined);
  };
  return (
    <li className={styles["logbook"]}>
      <div id={id} className={styles["whole"]}>
        <div className={styles["title"]}>
          <bdi>{asideThing(aside)}</bdi>
        </div>
        <div className={styles["about"]}>{about}</div>
        {path === undefined && problem !== undefined && (
          <p role="alert">
            {problem.wrong} {problem.right}.
          </p>
        )}
        {broken && link && choices && (
          <AsideLink
            link={link}
            isNamedAside={broken.isNamedAside}
            choices={choices}
            value={typed ?? ""}
            onChange={change}
            problem={problem}
          />
        )}
        {field !== undefined && (
          <Field
            label={`What ${field} should be`}
            value={typed ?? fieldText(fieldAt(row, field))}
            onChange={change}
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
            Put back without {link === undefined ? path : `its ${link.word}`}
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
