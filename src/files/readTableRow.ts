import {
  efforts,
  focuses,
  type LapSource,
  longestName,
  type Reading,
  runKinds,
  runRanges,
  sameName,
  surfaces,
} from "#domain";
import { longestNote } from "#entry";
import { TableCells } from "./tableCells.ts";
import { readClock } from "./tableClock.ts";
import { readTableDate } from "./tableDate.ts";
import type { TableForm } from "./tableForm.ts";
import { readGuest } from "./tableGuest.ts";
import type { TableAbout, TableLap, TableSettings, WholeTable } from "./tableLap.ts";
import { readLapTimes } from "./tableLapTimes.ts";
import { readRemarks } from "./tableRemarks.ts";
import { readZone } from "./tableZone.ts";

const sources: readonly LapSource[] = ["typed", "memory", "imported"];
const focusWords = focuses.map(({ focus }) => focus);

/** Reads one row of a table as a lap, or says which cell cannot be read and what would be right. */
export function readTableRow(
  line: number,
  row: readonly string[],
  form: TableForm,
  whole: WholeTable,
): Reading<{ row: TableLap }> {
  const cells = new TableCells(row, form.columns);
  if (row.slice(form.columns.length).some((cell) => cell.trim() !== ""))
    cells.refuse(
      `The row has ${row.length} cells, the table has ${form.columns.length} columns.`,
      "Put quotes around a cell that holds the separator.",
    );
  const day = cells.take("date", (cell) => readTableDate(cell, form.dateOrder));
  const clock = cells.take("clock", readClock)?.clock ?? day?.clock;
  const date = day?.date ?? whole.date;
  const car = name(cells, "car", whole.car);
  const track = name(cells, "track", whole.track);
  const layout = form.columns.includes("layout")
    ? (cells.text("layout", "name of the layout", longestName)?.trim() ?? "")
    : undefined;
  const zone = cells.take("zone", readZone)?.zone;
  const [session, run, place] = [
    cells.whole("session", "session number"),
    cells.whole("run", "run number"),
    cells.whole("lap", "lap number"),
  ];
  const settings = settingsOf(cells, form.decimal);
  const about = aboutOf(cells);
  const lap = lapOf(cells, form);
  if (date === undefined)
    cells.refuse("The date is missing.", "Match a column as date, or say it for the whole table.");
  if (cells.problem !== undefined || date === undefined || lap === undefined)
    return { ok: false, problem: cells.problem ?? { at: 0, length: 0, wrong: "Not read.", right: "" } };
  return {
    ok: true,
    row: {
      line,
      date,
      car,
      ...apart(track, layout),
      settings,
      about,
      lap,
      ...given({ clock, instant: day?.instant, zone, session, run, place }),
    },
  };
}

/** The fields that are there. */
function given<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}

function name(cells: TableCells, kind: "car" | "track", whole = ""): string {
  const found = cells.text(kind, `name of the ${kind}`, longestName)?.trim() ?? whole.trim();
  if (sameName(found, "") || sameName(found, ","))
    cells.refuse(`The ${kind} is missing.`, `Match a column as ${kind}, or say it for the whole table.`);
  return found;
}

/** A comma sets off the layout from the track's name, where no column says the layout. */
function apart(
  track: string,
  layout: string | undefined,
): { readonly track: string; readonly layout: string } {
  const comma = track.indexOf(",");
  if (layout !== undefined || comma < 1) return { track, layout: layout ?? "" };
  return { track: track.slice(0, comma).trim(), layout: track.slice(comma + 1).trim() };
}

function settingsOf(cells: TableCells, decimal: string): TableSettings {
  return {
    kind: cells.oneOf("runKind", "kind of run", runKinds) ?? "pace",
    effort: cells.oneOf("effort", "effort", efforts) ?? "full",
    surface: cells.oneOf("surface", "surface", surfaces) ?? "dry",
    note: cells.text("runNote", "note on the run") ?? "",
    ...given({
      tyres: cells.text("tyres", "tyres"),
      fuelLitres: cells.measure("fuel", "fuel", decimal, runRanges.fuelLitres),
      setup: cells.text("setup", "set-up"),
      assists: cells.text("assists", "assists"),
      guest: readGuest(cells),
    }),
  };
}

function aboutOf(cells: TableCells): TableAbout {
  return given({
    focus: cells.oneOf("focus", "focus", focusWords),
    conditions: cells.text("conditions", "conditions"),
    note: cells.text("sessionNote", "note on the session"),
  });
}

function lapOf(cells: TableCells, form: TableForm): TableLap["lap"] | undefined {
  const remarks = cells.take("remarks", readRemarks)?.remarks ?? [];
  const times = readLapTimes(cells, form, remarks.length > 0);
  const source = cells.oneOf("source", "way a time is known", sources) ?? "imported";
  const isNotBest = cells.isYes("notBest", "not a PB") ? (true as const) : undefined;
  const isOdd = cells.isYes("odd", "confirmed as odd") ? (true as const) : undefined;
  const note = cells.text("note", "note on the lap");
  const signs = note === undefined ? 0 : [...note].length;
  if (signs > longestNote)
    cells.refuse(`The note on the lap has ${signs} characters.`, `It may have up to ${longestNote}.`);
  return times && { ...times, source, remarks, ...given({ note, isNotBest, isOdd }) };
}
