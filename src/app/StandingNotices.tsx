import { AsideNotice } from "./AsideNotice.tsx";
import { BackupNotice } from "./BackupNotice.tsx";
import { UnreadableNotice } from "./UnreadableNotice.tsx";
import { UpdateNotice } from "./UpdateNotice.tsx";
import { useAfterSession } from "./useAfterSession.ts";
import { useChores } from "./useChores.ts";
import { useClockWatch } from "./useClockWatch.ts";
import { useSetAside } from "./useSetAside.ts";

/** What the app does by itself once the page can be used, and what stands above the page because of it. */
export function StandingNotices() {
  useChores();
  useAfterSession();
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
