import { daysBetween, practiceDay, sayDate } from "#domain";
import { useBackupFolder, useLogbook, useShelvedNow } from "#live";
import { printAddress } from "#state/address.ts";

/** "last backup yesterday" */
export function BackupState({ className }: { readonly className: string | undefined }) {
  const { surroundings } = useLogbook();
  const { lastBackupAt, kind } = useShelvedNow();
  const folder = useBackupFolder();
  if (kind === "demo") return <span className={className}>demo logbook</span>;
  if (folder?.stopped !== undefined)
    return (
      <a className={className} href={printAddress({ place: "data" })}>
        automatic backup has stopped
      </a>
    );
  const dayOf = (at: number) => practiceDay(at, surroundings.zone(), 0);
  return (
    <span className={className}>
      {lastBackupAt === undefined
        ? "no backup yet"
        : `last backup ${sayAgo(dayOf(lastBackupAt), dayOf(surroundings.clock()))}`}
    </span>
  );
}

function sayAgo(day: string, today: string): string {
  const days = daysBetween(day, today);
  if (days <= 0) return "today";
  return days === 1 ? "yesterday" : days < 14 ? `${days} days ago` : sayDate(day);
}
