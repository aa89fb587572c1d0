import type { ShelvedLogbook } from "#db";
import { type CalendarDate, daysBetween, type NotedOn, sayDate } from "#domain";

const manyLaps = 100;
/** The first backup is wanted sooner: until then there is none at all. */
const firstLaps = 60;
const manyDays = 14;

/** How it stands with the backup of a logbook: "Last backup Wed 14 Oct 2026, 9 days ago: 214 laps since." */
export function sayBackup(
  { lapsSinceBackup }: Pick<ShelvedLogbook, "lapsSinceBackup">,
  lastOn: NotedOn | undefined,
  today: CalendarDate,
): string {
  const laps = `${lapsSinceBackup} ${lapsSinceBackup === 1 ? "lap" : "laps"}`;
  if (lastOn === undefined) return lapsSinceBackup === 0 ? "No backup yet." : `No backup yet: ${laps}.`;
  const since = lapsSinceBackup === 0 ? "no lap since" : `${laps} since`;
  return lastOn === "ahead"
    ? `Last backup on a day that is not known, because this device’s clock stood ahead then: ${since}.`
    : `Last backup ${sayDate(lastOn)}${ago(daysBetween(lastOn, today))}: ${since}.`;
}

function ago(days: number): string {
  if (days < 0) return "";
  return days === 0 ? ", today" : days === 1 ? ", yesterday" : `, ${days} days ago`;
}

/** Whether it is time to be reminded: many laps, or some after a while that is known to be long. */
export function isBackupDue(
  { lapsSinceBackup }: Pick<ShelvedLogbook, "lapsSinceBackup">,
  lastOn: NotedOn | undefined,
  today: CalendarDate,
): boolean {
  if (lapsSinceBackup >= (lastOn === undefined ? firstLaps : manyLaps)) return true;
  if (lapsSinceBackup === 0 || lastOn === undefined || lastOn === "ahead") return false;
  return daysBetween(lastOn, today) >= manyDays;
}

/** A size as it is read at a glance: "4 kB", "2.1 MB". */
export function sayBytes(bytes: number): string {
  return bytes < 1_000_000
    ? `${Math.max(1, Math.round(bytes / 1000))} kB`
    : `${(bytes / 1_000_000).toFixed(1)} MB`;
}
