import { useForecastsKept } from "#live";
import { AsideNotice } from "./AsideNotice.tsx";
import { BackupNotice } from "./BackupNotice.tsx";
import { UnreadableNotice } from "./UnreadableNotice.tsx";
import { UpdateNotice } from "./UpdateNotice.tsx";
import { useAfterSession } from "./useAfterSession.ts";
import { useChores } from "./useChores.ts";
import { useClockWatch } from "./useClockWatch.ts";
import { useSetAside } from "./useSetAside.ts";

/** A page that has just been opened is drawn first, and lets a session begin. */
const restMs = 2000;

/** What the app does by itself once the page can be used, and what stands above the page because of it. */
export function StandingNotices() {
  useChores();
  useAfterSession();
  useForecastsKept(restMs);
  useClockWatch();
  useSetAside();
  return (
    <>
      <UnreadableNotice />
      <AsideNotice />
      <UpdateNotice />
      <BackupNotice />
    </>
  );
}
