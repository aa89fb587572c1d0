import { type CalendarDate, sayDate } from "#domain";

/** What the driver reads when a logbook that was kept here is there no more. */
export function sayLost(lastBackupOn: CalendarDate | undefined): string {
  const backup =
    lastBackupOn === undefined
      ? "No backup of it was ever saved from here; one sent to another device would do."
      : `The last backup was saved on ${sayDate(lastBackupOn)}.`;
  return `The logbook that was kept here has disappeared from this browser, perhaps because site data were cleared. ${backup} Restore a backup, or begin afresh.`;
}
