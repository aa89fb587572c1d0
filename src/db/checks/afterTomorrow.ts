import type { Stamped, TableName } from "#domain";

const hour = 3_600_000;
const day = 24 * hour;
/** Clocks of the world are up to so far ahead of UTC, and behind it. */
const ahead = 14 * hour;
const behind = 12 * hour;

/** Fields that tell what has happened: days of the calendar, and instants. */
const happened: Partial<
  Readonly<Record<TableName, { readonly days: readonly string[]; readonly instants: readonly string[] }>>
> = {
  pages: { days: [], instants: ["from"] },
  sessions: { days: ["date"], instants: ["startedAt", "endedAt"] },
  runs: { days: [], instants: ["startedAt", "endedAt"] },
  targets: { days: ["setOn"], instants: ["setAt", "archivedAt"] },
  forecasts: { days: ["madeOn"], instants: [] },
  rigTests: { days: [], instants: ["endedAt"] },
  cornerReviews: { days: ["on"], instants: [] },
};

const dateOf = (instant: number) => new Date(instant).toISOString().slice(0, 10);

/**
 * Why a row that has been found well-formed cannot have happened yet, or undefined: it tells of a day after tomorrow,
 * whatever zone it was written in, and the clock that wrote it did not show that day either. What a clock ahead wrote in
 * good faith is taken: its stamps are put right, and its date is asked about where it is shown.
 * @param now this device's clock, epoch ms
 */
export function afterTomorrow(table: TableName, row: Stamped, now: number): string | undefined {
  const fields = row as unknown as Readonly<Record<string, unknown>>;
  const { createdAt, updatedAt, had = [] } = row;
  const tomorrow = dateOf(Math.max(now, createdAt, updatedAt, ...had) + ahead + day);
  const end = Date.parse(tomorrow) + day + behind;
  const { days = [], instants = [] } = happened[table] ?? {};
  const late = [
    ...days.map((field) => fields[field]).filter((date) => typeof date === "string" && date > tomorrow),
    ...instants
      .map((field) => fields[field])
      .filter((instant) => typeof instant === "number")
      .filter((instant) => instant >= end)
      .map(dateOf),
  ][0];
  return late === undefined ? undefined : `dated ${late}, after tomorrow; is this device’s clock right?`;
}
