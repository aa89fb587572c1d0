import type { BothEdited } from "#db";
import { formatLapTime, remarkKinds, type Stamped, sayDate, type TableName } from "#domain";

const oneOf: Readonly<Record<TableName | "laps", string>> = {
  sessions: "session",
  runs: "run",
  laps: "lap",
  combos: "combo",
  cars: "car",
  tracks: "track",
  layouts: "layout",
  pages: "page turned",
  references: "reference lap",
  targets: "target",
  forecasts: "forecast",
  rigs: "record of the rig",
  rigTests: "rig test",
  cornerReviews: "corner review",
  plans: "plan",
  preferences: "preferences",
};

/** "lap 4 of run 2, Wed 14 Oct 2026, Varnholt Ring · club hatch" */
export function sayPlace({ table, place }: Pick<BothEdited, "table" | "place">): string {
  const { date, combo, run, lap } = place;
  const what =
    lap !== undefined && run !== undefined
      ? `lap ${lap} of run ${run}`
      : run !== undefined
        ? `run ${run}`
        : oneOf[table];
  return [what, date && sayDate(date), combo].filter((part) => part !== undefined).join(", ");
}

/** What one side holds in the fields that differ: "time 1:23.456 · deleted". */
export function sayBothEdited({ fields }: Pick<BothEdited, "fields">, side: Stamped): string {
  if (side.deletedAt !== undefined) return "deleted";
  const values = side as unknown as Readonly<Record<string, unknown>>;
  const said = fields
    .filter((field) => field !== "deletedAt" && field !== "decimals")
    .map((field) => sayField(field, values));
  return said.length === 0 ? "not deleted" : said.join(" · ");
}

const words: Readonly<Record<string, string>> = {
  ms: "time",
  n: "place",
  runId: "run",
  comboId: "combo",
  sessionId: "session",
  carId: "car",
  layoutId: "layout",
  trackId: "track",
  rigId: "rig settings",
  endedAt: "end",
  startedAt: "start",
  archivedAt: "put away",
  targetMs: "target of the day",
  isNotBest: "not a PB",
  isOdd: "confirmed as odd",
  sectorDecimals: "decimals of its sectors",
  displayDecimals: "decimals",
  relativeTo: "relative to",
  dayStartsAt: "day begins at",
  settlingLaps: "settling laps",
  marginPercent: "margin",
  fuelLitres: "fuel",
  lapsDriven: "laps driven",
  gridPlace: "grid place",
  finishPlace: "finish place",
  lowestSpeeds: "lowest speeds",
  topSpeed: "top speed",
};

const longest = 60;

function sayField(field: string, values: Readonly<Record<string, unknown>>): string {
  const word = Object.hasOwn(words, field) ? words[field] : field;
  return `${word} ${sayValue(field, values)}`;
}

function sayValue(field: string, values: Readonly<Record<string, unknown>>): string {
  const value = values[field];
  if (value === undefined || value === "") return "none";
  if ((field === "ms" || field === "targetMs") && typeof value === "number")
    return formatLapTime(value, typeof values["decimals"] === "number" ? values["decimals"] : 3);
  if (field === "remarks" && Array.isArray(value)) return sayRemarks(value);
  if (typeof value === "string" && !field.endsWith("Id")) return short(value);
  if (typeof value === "number" && !field.endsWith("At")) return String(value);
  if (typeof value === "boolean") return value ? "yes" : "no";
  return "differs";
}

function sayRemarks(remarks: readonly { readonly kind: string }[]): string {
  const said = remarks.map(({ kind }) => remarkKinds.find((one) => one.kind === kind)?.word ?? kind);
  return said.length === 0 ? "none" : said.join(", ");
}

function short(text: string): string {
  return text.length <= longest ? `“${text}”` : `“${text.slice(0, longest).trimEnd()}…”`;
}
