import { createLogbook, type LedgerFault, openShelf, removeLogbook } from "#db";
import type { Surroundings } from "#live";
import { useDevice } from "#state/device.ts";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import styles from "./App.module.css";

interface FaultPageProps {
  readonly fault: LedgerFault;
  readonly surroundings: Surroundings;
  readonly onAgain: () => void;
}

/** The logbook could not be opened: why, and what can be done. Never advises to clear anything that may be intact. */
export function FaultPage({ fault, surroundings, onAgain }: FaultPageProps) {
  const beginAfresh = async () => {
    const shelf = await openShelf(surroundings);
    const { logbook, change } = useDevice.getState();
    if (logbook !== undefined) await removeLogbook(shelf, logbook);
    const { name } = await createLogbook(shelf, { title: "My logbook" });
    shelf.close();
    change({ logbook: name, markers: {} });
    window.location.hash = "#/data";
    onAgain();
  };
  return (
    <main className={styles["main"]} role="alert">
      <h1>Lap Ledger cannot open your logbook</h1>
      <Notice
        tone="caution"
        actions={
          <>
            <Button onClick={onAgain}>Try again</Button>
            <Button onClick={() => window.location.reload()}>Reload</Button>
            {fault.code === "gone" && (
              <Button variant="primary" onClick={beginAfresh}>
                Begin a new logbook and restore a backup
              </Button>
            )}
          </>
        }
      >
        <p>{fault.message}</p>
      </Notice>
    </main>
  );
}
