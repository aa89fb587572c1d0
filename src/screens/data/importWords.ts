import { formatLapTime, sayDate } from "#domain";
import {
  type ColumnKind,
  cellsOf,
  type DateOrder,
  readTableDate,
  readTableTime,
  type Table,
  type TableLap,
  type TableSession,
} from "#files";

/** "1 lap", "1,200 laps" */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString("en")} ${count === 1 ? one : many}`;
}

function firstCell(table: Table, isKind: (kind: ColumnKind) => boolean, fits: RegExp): string | undefined {
  const index = table.form.columns.findIndex(isKind);
  return index < 0 ? undefined : cellsOf(table, index).find((cell) => fits.test(cell));
}

const isTime = (kind: ColumnKind) => kind === "time" || kind.startsWith("sector ");

/** How one time of the table is read: "“1:23,456” is read as 1:23.456". */
export function sayTimeExample(table: Table, fits = /[.,]\d/): string | undefined {
  const cell = firstCell(table, isTime, fits);
  if (cell === undefined) return undefined;
  const read = readTableTime(cell, table.form);
  return read.ok ? `“${cell}” is read as ${formatLapTime(read.ms, read.decimals)}.` : read.problem.wrong;
}

/** Whether the table has whole numbers for times that may be milliseconds. */
export function hasWholeTimes(table: Table): boolean {
  return firstCell(table, isTime, /^\d{4,}$/) !== undefined;
}

/** How one date of the table is read: "“3/4/2026” is read as Fri 3 Apr 2026". */
export function sayDateExample(table: Table): string | undefined {
  const cell = exampleDate(table);
  if (cell === undefined) return undefined;
  const as = (order: DateOrder | undefined) => {
    const read = readTableDate(cell, order);
    return read.ok ? sayDate(read.date) : undefined;
  };
  const { dateOrder } = table.form;
  if (dateOrder === undefined) {
    const orders: readonly DateOrder[] = cell.includes("-") ? ["day", "month", "year"] : ["day", "month"];
    return `“${cell}” may be ${orders.flatMap((order) => as(order) ?? []).join(" or ")}.`;
  }
  return `“${cell}” is read as ${as(dateOrder) ?? "no date"}.`;
}

/** The date that tells most: one that would be another day in another order. */
function exampleDate(table: Table): string | undefined {
  const index = table.form.columns.indexOf("date");
  if (index < 0) return undefined;
  const cells = cellsOf(table, index);
  const day = (cell: string, order: DateOrder) => {
    const read = readTableDate(cell, order);
    return read.ok ? read.date : "";
  };
  return cells.find((cell) => day(cell, "day") !== day(cell, "month")) ?? cells[0];
}

/** "120 laps in 9 sessions, Wed 14 Oct 2026 to Tue 3 Nov 2026." */
export function sayFound(laps: number, sessions: readonly TableSession[]): string {
  const [first, last] = [sessions[0], sessions.at(-1)];
  if (first === undefined || last === undefined) return "No lap can be read yet.";
  const when =
    first.date === last.date ? sayDate(first.date) : `${sayDate(first.date)} to ${sayDate(last.date)}`;
  return `${counted(laps, "lap")} in ${counted(sessions.length, "session")}, ${when}.`;
}

/** "3 laps are of guests: “Ada”, “No” and someone without a name." Undefined where the driver drove all of them. */
export function sayGuests(laps: readonly TableLap[]): string | undefined {
  const guests = laps.flatMap(({ settings: { guest } }) => guest ?? []);
  if (guests.length === 0) return undefined;
  const names = [...new Set(guests)].sort((a, b) => Number(a === "") - Number(b === ""));
  const shown = names.slice(0, 5).map((name) => (name === "" ? "someone without a name" : `“${name}”`));
  if (names.length > 5) shown.push(`${names.length - 5} more`);
  const last = shown.pop();
  const all = shown.length === 0 ? last : `${shown.join(", ")} and ${last}`;
  return `${counted(guests.length, "lap is", "laps are")} of ${names.length === 1 ? "a guest" : "guests"}: ${all}.`;
}

/** "New: car “club hatch”, tracks “Varnholt Ring” and “Ash Hill”." */
export function sayNew(cars: readonly string[], tracks: readonly string[]): string | undefined {
  const names = (all: readonly string[], word: string) => {
    if (all.length === 0) return [];
    const shown = all.slice(0, 5).map((name) => `“${name}”`);
    const rest = all.length > 5 ? ` and ${all.length - 5} more` : "";
    return [`${word}${all.length === 1 ? "" : "s"} ${shown.join(", ")}${rest}`];
  };
  const parts = [...names(cars, "car"), ...names(tracks, "track")];
  return parts.length === 0 ? undefined : `New in this logbook: ${parts.join("; ")}.`;
}
