import { type FocusEvent, Fragment, type KeyboardEvent, useEffect, useRef, useState } from "react";
import { Button } from "#ui/Button.tsx";
import { classes } from "#ui/classes.ts";
import { Spoken } from "#ui/Spoken.tsx";
import { CellProblems } from "./CellProblems.tsx";
import styles from "./CornerGrid.module.css";
import type { CornerCell } from "./cornerCells.ts";
import type { CornerRow } from "./cornerRows.ts";
import { cellWords } from "./cornerWords.ts";
import { cellId, GridCell } from "./GridCell.tsx";
import type { CornerRows } from "./useCornerRows.ts";

/** The cell the driver is in. */
interface Place {
  readonly key: string;
  readonly cell: CornerCell;
}

interface CornerGridProps {
  readonly table: CornerRows;
  /** The cells that are shown, the number first. */
  readonly cells: readonly CornerCell[];
  /** Several cells at once were pasted into one. */
  readonly onPasted: (text: string) => void;
}

/**
 * The corners of a layout as a table that is typed in place. Enter goes down to the column in which typing in the row began,
 * arrow keys to the cells around; a row is stored when it is left.
 */
export function CornerGrid({ table, cells, onPasted }: CornerGridProps) {
  const { rows, type, putBack, store, remove } = table;
  const [at, setAt] = useState<Place>();
  /** The row that Enter was pressed in with something wrong in it. */
  const [refused, setRefused] = useState<string>();
  /** The column in which typing in the row began, since it was come into. */
  const begun = useRef<Place>(undefined);
  const inRow = useRef<string>(undefined);

  /** The empty row to go on in, once the one before it is stored. */
  const [awaited, setAwaited] = useState<string>();
  useEffect(() => {
    const next = awaited === undefined ? null : document.getElementById(cellId(awaited, "number"));
    if (next === null) return;
    next.focus();
    setAwaited(undefined);
  }, [awaited, rows]);

  const goTo = (row: CornerRow | undefined, cell: CornerCell) => {
    if (row === undefined) return false;
    const shown = cell === "number" && row.corner !== undefined ? (cells[1] ?? cell) : cell;
    const element = document.getElementById(cellId(row.key, shown));
    element?.focus();
    return element !== null;
  };
  const onKeyDown = (row: CornerRow, cell: CornerCell, event: KeyboardEvent<HTMLInputElement>) => {
    const by = (step: number) => rows[rows.indexOf(row) + step];
    const { key, currentTarget: input } = event;
    const isAtEnd = input.selectionStart === input.value.length && input.selectionEnd === input.value.length;
    const isAtStart = input.selectionStart === 0 && input.selectionEnd === 0;
    const isAll = input.selectionStart === 0 && isAtEndOf(input);
    if (key === "Enter") {
      event.preventDefault();
      const wrong = cells.find((one) => row.reading.problems[one] !== undefined);
      if (wrong !== undefined) {
        setRefused(row.key);
        goTo(row, wrong);
        return;
      }
      if (cell === "number" && !row.isTyped && row.corner === undefined) {
        store(row.key, true);
        setAwaited(String(Number(row.key) + 1));
        return;
      }
      const column = begun.current?.key === row.key ? begun.current.cell : cell;
      if (!goTo(by(event.shiftKey ? -1 : 1), column)) store(row.key);
    } else if (key === "ArrowDown" || key === "ArrowUp") {
      event.preventDefault();
      goTo(by(key === "ArrowDown" ? 1 : -1), cell);
    } else if (key === "ArrowRight" && (isAtEnd || isAll)) {
      event.preventDefault();
      const next = cells[cells.indexOf(cell) + 1];
      if (next !== undefined) goTo(row, next);
      else document.getElementById(removeId(row.key))?.focus();
    } else if (key === "ArrowLeft" && (isAtStart || isAll)) {
      event.preventDefault();
      const before = cells[cells.indexOf(cell) - 1];
      if (before !== undefined && (before !== "number" || row.corner === undefined)) goTo(row, before);
    } else if (key === "Escape" && row.isTyped) {
      event.stopPropagation();
      putBack(row, cell);
    }
  };
  const onFocus = (row: CornerRow, cell: CornerCell) => {
    setAt({ key: row.key, cell });
    if (inRow.current !== row.key) begun.current = undefined;
    inRow.current = row.key;
    setRefused((now) => (now === row.key ? now : undefined));
  };
  const onLeave = (row: CornerRow, { relatedTarget, currentTarget }: FocusEvent<HTMLElement>) => {
    setAt(undefined);
    if (relatedTarget instanceof Node && currentTarget.contains(relatedTarget)) return;
    store(row.key);
  };
  const onRemove = async (row: CornerRow) => {
    const next = rows[rows.indexOf(row) + 1];
    if (await remove(row)) goTo(next, cells[1] ?? "name");
  };
  /** What is wrong is said once the cell has been left, or Enter refused. */
  const isSaid = (row: CornerRow, cell: CornerCell) =>
    at?.key !== row.key || at.cell !== cell || refused === row.key;

  return (
    <>
      <p className={styles["hint"]} aria-hidden="true">
        {at === undefined
          ? "Tab goes on, Enter goes to the next corner. A row is stored when you leave it."
          : `${cellWords[at.cell].label}: ${cellWords[at.cell].hint}`}
      </p>
      <div className={styles["box"]}>
        <table className={styles["table"]}>
          <caption>
            <Spoken>Corners of the layout. A row is stored when you leave it.</Spoken>
          </caption>
          <thead>
            <tr>
              {cells.map((cell) => (
                <th key={cell} scope="col" data-cell={cell}>
                  {cellWords[cell].head}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <Fragment key={row.key}>
                <tr data-chain={row.chain} onBlur={(event) => onLeave(row, event)}>
                  {cells.map((cell) =>
                    cell === "number" && row.corner !== undefined ? (
                      <th key={cell} scope="row" className={classes(styles["number"], styles["bracket"])}>
                        {row.corner.number}
                        {(row.chain === "first" || row.chain === "middle") && (
                          <Spoken>, the next one at once</Spoken>
                        )}
                      </th>
                    ) : (
                      <td
                        key={cell}
                        data-cell={cell}
                        className={classes(cell === "number" && styles["bracket"])}
                      >
                        <GridCell
                          row={row}
                          cell={cell}
                          isWrong={row.reading.problems[cell] !== undefined && isSaid(row, cell)}
                          onChange={(text) => {
                            if (begun.current?.key !== row.key) begun.current = { key: row.key, cell };
                            type(row, cell, text);
                          }}
                          onKeyDown={(event) => onKeyDown(row, cell, event)}
                          onFocus={() => onFocus(row, cell)}
                          onPasted={onPasted}
                        />
                      </td>
                    ),
                  )}
                  <td className={styles["removes"]}>
                    {(row.corner !== undefined || row.isTyped) && (
                      <Button
                        id={removeId(row.key)}
                        variant="quiet"
                        tabIndex={-1}
                        aria-label={`Remove corner ${row.key}`}
                        onKeyDown={(event) => {
                          if (event.key === "ArrowLeft") goTo(row, cells.at(-1) ?? "name");
                        }}
                        onClick={() => void onRemove(row)}
                      >
                        Remove
                      </Button>
                    )}
                  </td>
                </tr>
                <CellProblems row={row} isSaid={(cell) => isSaid(row, cell)} columns={cells.length + 1} />
              </Fragment>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

const removeId = (key: string) => `remove-corner-${key}`;

const isAtEndOf = ({ selectionEnd, value }: HTMLInputElement) =>
  value !== "" && selectionEnd === value.length;
