import { useEffect } from "react";
import { sessionCount } from "#db";
import { followRows, useLogbook, useShelvedNow } from "#live";
import { useDevice } from "#state/device.ts";

/**
 * Notes outside the database how many sessions it holds, whenever that changes: an empty database where there was a full
 * one is then not taken for a new one. A logbook that has been closed or lost keeps the marker of its last good state.
 */
export function useMarker(): void {
  const { book } = useLogbook();
  const { lastBackupAt } = useShelvedNow();
  useEffect(
    () =>
      followRows(
        () => sessionCount(book),
        (sessions) => {
          if (book.status.get().kind !== "ok") return;
          const marker = { sessions, ...(lastBackupAt !== undefined && { lastBackupAt }) };
          useDevice.getState().change(({ markers }) => ({ markers: { ...markers, [book.name]: marker } }));
        },
      ),
    [book, lastBackupAt],
  );
}
