import { daysBetween, type NotedOn, notedOn, practiceDay, sayDate } from "#domain";
import { useBackupFolder, useLogbook, useShelvedNow } from "#live";
import { printAddress } from "#state/address.ts";

interface BackupStateProps {
  readonly className: string | undefined;
  /** The page says it itself. */
  readonly isOnData: boolean;
}

/** "last backup yesterday"; in the demo, which needs none, the way back to one's own. */
export function BackupState({ className, isOnData }: BackupStateProps) {
  const { surroundings } = useLogbook();
  const { lastBackupAt, kind } = useShelvedNow();
  const folder = useBackupFolder();
  if (kind === "demo")
    return (
      <a className={className} href={printAddress({ place: "data", part: "logbooks" })}>
        your own logbooks
      </a>
    );
  if (folder?.stopped !== undefined)
    return (
      <a className={className} href={printAddress({ place: "data", part: "automatic" })}>
        automatic backup has stopped
      </a>
    );
  if (isOnData) return null;
  const [now, zone] = [surroundings.clock(), surroundings.zone()];
  return (
    <span className={className}>
      {lastBackupAt === undefined
        ? "no backup yet"
        : `last backup${sayAgo(notedOn(lastBackupAt, now, zone), practiceDay(now, zone, 0))}`}
    </span>
  );
}

function sayAgo(day: NotedOn, today: string): string {
  if (day === "ahead") return ": the clock stood ahead then";
  const days = daysBetween(day, today);
  if (days === 0) return " today";
  return days === 1 ? " yesterday" : days < 14 ? ` ${days} days ago` : ` ${sayDate(day)}`;
}
