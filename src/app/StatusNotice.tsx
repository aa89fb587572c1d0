import { saveHeldRows, useHeldRows, useLogbook, useStatus } from "#live";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { BackupButton } from "./BackupButton.tsx";

const words = {
  blocked: "Another tab of Lap Ledger holds the logbook open in an older version. Close it to go on.",
  newerTab: "Lap Ledger was updated in another tab. Reload to go on; what you typed is kept.",
  newer:
    "This logbook was last used by a newer version of Lap Ledger. It can be read and backed up here, not written.",
  gone: "The stored logbook was replaced or removed in another tab, or has disappeared from this browser. First save what this tab still holds, then reload.",
  closed: "The browser lost its connection to the logbook. Reload to go on; what you typed is kept.",
} as const;

/** Stands above the page while nothing can be written, and says why. */
export function StatusNotice() {
  const { kind } = useStatus();
  const { book, entry, surroundings } = useLogbook();
  const held = useHeldRows();
  if (kind === "ok") return null;
  const saveHeld = () =>
    void saveHeldRows(surroundings, held.current, { title: entry.title, schema: book.schema });
  return (
    <div role="alert">
      <Notice
        tone="caution"
        actions={
          <>
            {kind === "gone" ? (
              <Button onClick={saveHeld}>Save what this tab still holds</Button>
            ) : (
              <BackupButton />
            )}
            <Button onClick={() => window.location.reload()}>Reload</Button>
          </>
        }
      >
        <p>{words[kind]}</p>
      </Notice>
    </div>
  );
}
