import { useRef, useState } from "react";
import { type ComboWithNames, editCorners, removeCorner } from "#db";
import type { Corner } from "#domain";
import { type Draft, useDraft, useWrite } from "#live";
import type { CornerCell, TypedCorner } from "./cornerCells.ts";
import { type CornerRow, cornerRows, type TypedRows, withCell, withoutStored } from "./cornerRows.ts";
import type { AroundCorner } from "./readCorner.ts";

export interface CornerRows {
  readonly rows: readonly CornerRow[];
  readonly draft: Draft<TypedRows>;
  readonly type: (row: CornerRow, cell: CornerCell, text: string) => void;
  /** Puts a cell back to what is stored. */
  readonly putBack: (row: CornerRow, cell: CornerCell) => void;
  /** Stores what is typed in a row, where all of it can be read; a new corner may be nothing but its number. */
  readonly store: (key: string, isBareMeant?: boolean) => void;
  readonly remove: (row: CornerRow) => Promise<boolean>;
}

const nothing: TypedRows = {};
const bare: TypedCorner = {};

/** The table of a layout's corners: what is typed in it stays, over a reload too, until its row is stored. */
export function useCornerRows({ combo, layout }: ComboWithNames, around: AroundCorner): CornerRows {
  const write = useWrite();
  const draft = useDraft<TypedRows>(`corners ${combo.id}`, nothing);
  // Until the rows have been read again, what was stored last is shown, not what stood there before.
  const [written, setWritten] = useState<{ readonly instead: unknown; readonly corners: Written }>();
  const fresh = written?.instead === layout ? written.corners : none;
  const corners = [
    ...layout.corners.filter(({ number }) => !fresh.has(number)),
    ...[...fresh.values()].map(({ corner }) => corner),
  ];
  const speeds = new Map(around.speeds);
  for (const [number, { speed }] of fresh)
    if (speed === undefined) speeds.delete(number);
    else speeds.set(number, speed);
  const rows = cornerRows(corners, draft.value, { ...around, speeds });
  const now = useRef({ typed: draft.value, layout, rows, speeds });
  now.current = { typed: draft.value, layout, rows, speeds };

  /** Two rows may be stored before the page is drawn again, so that what is typed is kept here as well. */
  const keep = (typed: TypedRows) => {
    now.current = { ...now.current, typed };
    draft.set(Object.keys(typed).length === 0 ? undefined : typed);
  };
  /** What of each row is being stored: left twice, it is stored once. */
  const atWork = useRef(new Map<string, TypedCorner>());
  const store = async (key: string, isBareMeant = false) => {
    const row = now.current.rows.find((one) => one.key === key);
    if (row === undefined || Object.keys(row.reading.problems).length > 0) return;
    if (!row.isTyped && !(isBareMeant && row.corner === undefined)) return;
    const typed = now.current.typed[key] ?? bare;
    if (atWork.current.get(key) === typed) return;
    atWork.current.set(key, typed);
    const { edit } = row.reading;
    const change = await write(
      (book) =>
        editCorners(book, {
          layoutId: layout.id,
          comboId: combo.id,
          corners: [{ ...edit, ...(row.corner && { expected: row.corner }) }],
        }),
      { isUndoOffered: true },
    );
    atWork.current.delete(key);
    if (change === undefined) return;
    const stored = change.edits.flatMap(({ table, after }) =>
      table === "layouts" && after ? after.corners : [],
    );
    const corner = stored.find(({ number }) => number === edit.number);
    const speed = "lowestSpeed" in edit ? edit.lowestSpeed : now.current.speeds.get(edit.number);
    const { layout: instead } = now.current;
    if (corner)
      setWritten((last) => ({
        instead,
        corners: new Map([
          ...(last?.instead === instead ? last.corners : none),
          [edit.number, { corner, speed }],
        ]),
      }));
    keep(withoutStored(now.current.typed, key, typed));
  };
  return {
    rows,
    draft,
    type: (row, cell, text) =>
      keep(withCell(now.current.typed, row, cell, text, speeds.get(row.corner?.number ?? 0))),
    putBack: (row, cell) => {
      const { [row.key]: typed = {}, ...others } = now.current.typed;
      const { [cell]: _, ...rest } = typed;
      keep(Object.keys(rest).length === 0 ? others : { ...others, [row.key]: rest });
    },
    store: (key, isBareMeant) => void store(key, isBareMeant),
    remove: async (row) => {
      const { corner, key } = row;
      const forget = () => {
        const { [key]: _, ...others } = now.current.typed;
        keep(others);
      };
      if (corner === undefined) {
        forget();
        return true;
      }
      const edit = { layoutId: layout.id, number: corner.number };
      if (!(await write((book) => removeCorner(book, edit), { isUndoOffered: true }))) return false;
      setWritten(undefined);
      forget();
      return true;
    },
  };
}

type Written = ReadonlyMap<number, { readonly corner: Corner; readonly speed: number | undefined }>;
const none: Written = new Map();
