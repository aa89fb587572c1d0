import { type ColumnKind, sectorOf } from "./columns.ts";
import type { Table } from "./tableForm.ts";
import { readTableTime } from "./tableTime.ts";

/**
 * Whether a table ends in mid-cell, as one does whose copying or download broke off. It can be known only where the
 * last line has no line end, which a whole table may lack too; so its last cell is held against the same column above.
 * "cut": a time under a third of every other, or a date of fewer signs than all others have; what stands there is no
 * lap. "may be cut": fewer cells than in every other row, or a time of fewer decimals than any other; that may be so.
 */
export function cutOff({ rows, form, isOpenEnded }: Table): "cut" | "may be cut" | undefined {
  const last = rows.at(-1);
  const others = rows.slice(0, -1);
  if (!isOpenEnded || last === undefined || others.length === 0) return undefined;
  const at = last.cells.length - 1;
  const cell = last.cells[at]?.trim() ?? "";
  const above = others.map(({ cells }) => cells[at]?.trim() ?? "").filter(Boolean);
  const kind = form.columns[at];
  const isShorter = others.every(({ cells }) => cells.length > last.cells.length);
  const least = isShorter ? "may be cut" : undefined;
  if (kind === undefined || cell === "" || above.length === 0) return least;
  if (kind === "date") {
    const [length] = above.map((one) => one.length);
    return above.every((one) => one.length === length) && cell.length < (length ?? 0) ? "cut" : least;
  }
  if (!isTime(kind)) return least;
  const timeOf = (text: string) => {
    const read = readTableTime(text, form);
    return read.ok ? [read] : [];
  };
  const [time] = timeOf(cell);
  const times = above.flatMap(timeOf);
  if (time === undefined || times.length === 0) return least;
  if (times.every(({ ms }) => time.ms * 3 < ms)) return "cut";
  return times.every(({ decimals }) => time.decimals < decimals) ? "may be cut" : least;
}

const isTime = (kind: ColumnKind) => kind === "time" || sectorOf(kind) !== undefined;
