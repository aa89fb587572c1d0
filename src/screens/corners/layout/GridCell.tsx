import type { ClipboardEvent, KeyboardEvent } from "react";
import styles from "./CornerGrid.module.css";
import type { CornerCell } from "./cornerCells.ts";
import type { CornerRow } from "./cornerRows.ts";
import { cellWords } from "./cornerWords.ts";

/** The element in which a cell of a corner is typed. */
export const cellId = (key: string, cell: CornerCell) => `corner-${key}-${cell}`;
/** The element that says what is wrong with it. */
export const problemId = (key: string, cell: CornerCell) => `${cellId(key, cell)}-problem`;

interface GridCellProps {
  readonly row: CornerRow;
  readonly cell: CornerCell;
  /** What is wrong with it is said under the row. */
  readonly isWrong: boolean;
  readonly onChange: (text: string) => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly onFocus: () => void;
  readonly onPasted: (text: string) => void;
}

/** One cell of the table: what is typed, and beside it what it was read as where that is not the same. */
export function GridCell({ row, cell, isWrong, onChange, onKeyDown, onFocus, onPasted }: GridCellProps) {
  const { key, texts, reading } = row;
  const text = texts[cell];
  const said = reading.said[cell];
  const id = cellId(key, cell);
  const isSaid = said !== undefined && said !== text.trim();
  const onPaste = (event: ClipboardEvent) => {
    const pasted = event.clipboardData.getData("text/plain");
    if (!/[\t\n]./.test(pasted.trim())) return;
    event.preventDefault();
    onPasted(pasted);
  };
  return (
    <div className={styles["cell"]}>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={cell === "name"}
        dir={cell === "name" ? "auto" : undefined}
        aria-label={`${cellWords[cell].label}, ${cell === "number" ? "new corner" : `corner ${texts.number || key}`}`}
        aria-invalid={isWrong ? true : undefined}
        aria-describedby={isWrong ? problemId(key, cell) : isSaid ? `${id}-said` : undefined}
        value={text}
        onChange={(event) => onChange(event.target.value)}
        onKeyDown={onKeyDown}
        onFocus={(event) => {
          event.target.select();
          onFocus();
        }}
        onPaste={onPaste}
      />
      {isSaid && (
        <>
          <span aria-hidden="true" className={styles["said"]}>
            {said}
          </span>
          <span id={`${id}-said`} hidden>
            read as {said}
          </span>
        </>
      )}
    </div>
  );
}
