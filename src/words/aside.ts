import { type AsideRow, formatLapTime, isCalendarDate, sayDate } from "#domain";

const words: Readonly<Record<string, string>> = {
  preferences: "preferences",
  cars: "car",
  tracks: "track",
  layouts: "track layout",
  combos: "combo",
  pages: "new page",
  references: "reference lap",
  sessions: "session",
  runs: "run",
  laps: "lap",
  rigs: "rig settings",
  targets: "target",
  forecasts: "forecast",
  rigTests: "rig test",
  cornerReviews: "corner review",
  plans: "plan",
};

/** What a row set aside is, by what can be read of it: "session of Wed 25 Nov 2026", "car “Club hatch”", "lap 1:25.118". */
export function asideThing({ table, row = {} }: AsideRow): string {
  const word = (Object.hasOwn(words, table) ? words[table] : undefined) ?? `row of ${table}`;
  const { name, date, ms, n } = row;
  if (typeof name === "string" && name !== "") return `${word} “${name}”`;
  if (typeof date === "string" && isCalendarDate(date)) return `${word} of ${sayDate(date)}`;
  if (table === "laps" && Number.isInteger(ms) && (ms as number) > 0)
    return `${word} ${formatLapTime(ms as number)}`;
  return (table === "runs" || table === "laps") && Number.isFinite(n) ? `${word} ${n}` : word;
}

/** "One row of this logbook is set aside" */
export function sayAsideCount(count: number): string {
  return count === 1
    ? "One row of this logbook is set aside"
    : `${count.toLocaleString("en")} rows of this logbook are set aside`;
}
