import { daysBetween, practiceDay, sayDate } from "#domain";
import { useLogbook, useShelvedNow } from "#live";

/** "last backup yesterday" */
export function BackupState({ className }: { readonly className: string | undefined }) {
  const { surroundings } = useLogbook();
  const { lastBackupAt, kind } = useShelvedNow();
  if (kind === "demo") return <span className={className}>demo logbook</span>;
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
