import { type CalendarDate, isAfterTomorrow } from "#domain";
import { cutOff } from "./cutOff.ts";
import { readTableRow } from "./readTableRow.ts";
import type { Table } from "./tableForm.ts";
import type { TableLap, WholeTable } from "./tableLap.ts";

/** A row that cannot be read, and why. */
export interface UnreadRow {
  readonly line: number;
  readonly text: string;
  readonly wrong: string;
  readonly right: string;
}

export interface ReadLaps {
  readonly laps: readonly TableLap[];
  readonly unread: readonly UnreadRow[];
  /** The last line may have been cut off and was read as it stands. */
  readonly mayBeCut: boolean;
}

const mostRows = 100_000;

/**
 * Reads every row of a table as a lap. No row is dropped: one that cannot be read comes back with its line and reason.
 * @param today a lap dated later than tomorrow is refused
 */
export function readLaps(table: Table, whole: WholeTable, today: CalendarDate): ReadLaps {
  const laps: TableLap[] = [];
  const unread: UnreadRow[] = [];
  const leave = (line: number, cells: readonly string[], wrong: string, right: string) =>
    unread.push({ line, text: cells.filter(Boolean).join(" · ").slice(0, 200), wrong, right });
  const end = cutOff(table);
  for (const [index, { line, cells, fault }] of table.rows.entries()) {
    if (fault !== undefined) leave(line, cells, fault, "Double a quote that belongs to the text.");
    else if (index >= mostRows)
      leave(line, cells, "The table is too long.", `Import ${mostRows} rows at a time.`);
    else if (end === "cut" && index === table.rows.length - 1)
      leave(
        line,
        cells,
        `The table breaks off here, in “${cells.at(-1)?.trim()}”.`,
        "Copy or save the whole table once more. If this line is whole, put a line end behind it.",
      );
    else {
      const read = readTableRow(line, cells, table.form, whole);
      if (!read.ok) leave(line, cells, read.problem.wrong, read.problem.right);
      else if (isAfterTomorrow(read.row.date, today))
        leave(line, cells, `${read.row.date} has not come yet.`, "Check the order of dates, or the date.");
      else laps.push(read.row);
    }
  }
  const mayBeCut = end === "may be cut" && laps.at(-1)?.line === table.rows.at(-1)?.line;
  return { laps, unread, mayBeCut };
}
