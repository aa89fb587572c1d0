import { useMemo } from "react";
import { editCorners } from "#db";
import type { Id, Layout } from "#domain";
import { type Typed, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { counted, listed } from "#words";
import { cornerCells, unitOf } from "./cornerCells.ts";
import { cellWords } from "./cornerWords.ts";
import styles from "./Layout.module.css";
import type { AroundCorner } from "./readCorner.ts";
import { type PastedLine, readPasted } from "./readPasted.ts";

interface PasteDialogProps {
  readonly comboId: Id;
  readonly layout: Layout;
  readonly around: AroundCorner;
  readonly typed: Typed<string>;
  readonly onClose: () => void;
}

/** So many lines are drawn; the counts are of all. */
const drawn = 150;

/** Corners out of a spreadsheet: what each line was read as, and what of it could not be, before anything is stored. */
export function PasteDialog({ comboId, layout, around, typed, onClose }: PasteDialogProps) {
  const write = useWrite();
  const { corners, id: layoutId } = layout;
  const text = typed.value;
  const { lines, unknown } = useMemo(() => readPasted(text, corners, around), [text, corners, around]);
  const edits = lines.flatMap(({ edit }) => edit ?? []);
  const there = edits.filter(({ number }) => corners.some((corner) => corner.number === number));
  const wrong = lines.filter(({ problems }) => problems.length > 0);
  const store = async () => {
    const done = await write((book) => editCorners(book, { layoutId, comboId, corners: edits }), {
      isUndoOffered: true,
    });
    if (done === undefined) return;
    typed.set(undefined);
    onClose();
  };
  return (
    <Dialog
      title="Corners from a spreadsheet"
      onClose={onClose}
      actions={
        <ButtonRow
          removes={
            text !== "" && (
              <Button size="between" variant="caution" onClick={() => typed.set(undefined)}>
                Discard the text
              </Button>
            )
          }
          others={
            <Button size="between" onClick={onClose}>
              {text === "" ? "Cancel" : "Decide later"}
            </Button>
          }
          main={
            <Button
              size="between"
              variant="primary"
              disabled={edits.length === 0}
              onClick={() => void store()}
            >
              Store {counted(edits.length, "corner")}
            </Button>
          }
        />
      }
    >
      <div className={styles["pasted"]}>
        <TextArea
          label="Rows of corners"
          rows={lines.length === 0 ? 6 : 3}
          hint={
            <>
              One corner a line, with a row of heads or in this order:{" "}
              {cornerCells.map((cell) => cellWords[cell].label.toLowerCase()).join(", ")}. Cells may be empty
              or left out at the end.
            </>
          }
          value={text}
          onChange={(next) => typed.set(next === "" ? undefined : next)}
        />
        <div aria-live="polite" className={styles["pasted"]}>
          {lines.length > 0 && (
            <p>
              {counted(edits.length, "corner")} read
              {wrong.length > 0 &&
                `, something wrong in ${counted(wrong.length, "line")}: ${wrong.length === 1 ? "it stays" : "they stay"} out whole`}
              .
              {there.length > 0 &&
                ` Of ${there.length === 1 ? "one" : there.length} something is known already; what is pasted takes its place, the rest stays.`}
              {unknown.length > 0 &&
                ` Not read: the ${unknown.length === 1 ? "column" : "columns"} ${listed(unknown.map((head) => `“${head.slice(0, 30)}”`))}.`}
            </p>
          )}
        </div>
        {wrong.length > 0 && (
          <RuledTable
            caption="Lines that stay out"
            columns={[
              { key: "line", title: "line", figures: true },
              { key: "why", title: "why" },
            ]}
            rows={wrong.slice(0, drawn).map(({ line, text: of, problems }) => ({
              id: String(line),
              cells: {
                line,
                why: (
                  <>
                    <bdi>{of.slice(0, 60)}</bdi>
                    {problems.map((problem) => (
                      <p key={sayProblem(problem)} className={styles["problem"]}>
                        {sayProblem(problem)}
                      </p>
                    ))}
                  </>
                ),
              },
            }))}
          />
        )}
        {edits.length > 0 && (
          <RuledTable
            caption="Read as"
            columns={[
              { key: "number", title: "corner", figures: true, strong: true },
              { key: "said", title: "" },
            ]}
            rows={lines
              .slice(0, drawn)
              .flatMap((line) =>
                line.edit === undefined
                  ? []
                  : [{ id: String(line.line), cells: { number: line.edit.number, said: sayRead(line) } }],
              )}
          />
        )}
      </div>
    </Dialog>
  );
}

/** "Church · turns right · hairpin · then long" */
function sayRead({ said }: PastedLine): string {
  const words = cornerCells.flatMap((cell) => {
    const text = said[cell];
    if (text === undefined || cell === "number") return [];
    const unit = cell === "after" ? "" : (unitOf(cell) ?? "");
    return cell === "name" || cell === "direction" || cell === "bend"
      ? [text]
      : [`${cellWords[cell].label.toLowerCase()} ${text} ${unit}`.trim()];
  });
  return words.length === 0 ? "its number" : words.join(" · ");
}
