import { useEffect } from "react";
import { sessionCount } from "#db";
import { useLogbook, useShelvedNow } from "#live";
import { useDevice } from "#state/device.ts";

/**
 * Notes outside the database how many sessions it holds, when the page is opened and when it is left: an empty
 * database where there was a full one is then not taken for a new one.
 */
export function useMarker(): void {
  const { book } = useLogbook();
  const { lastBackupAt } = useShelvedNow();
  useEffect(() => {
    const note = async () => {
      const sessions = await sessionCount(book).catch(() => undefined);
      // A logbook that has been closed or lost keeps the marker of its last good state.
      if (sessions === undefined || book.status.get().kind !== "ok") return;
      const { markers, change } = useDevice.getState();
      change({
        markers: {
          ...markers,
          [book.name]: { sessions, ...(lastBackupAt !== undefined && { lastBackupAt }) },
        },
      });
    };
    const onLeave = () => {
      if (document.visibilityState === "hidden") void note();
    };
    void note();
    document.addEventListener("visibilitychange", onLeave);
    return () => document.removeEventListener("visibilitychange", onLeave);
  }, [book, lastBackupAt]);
}
