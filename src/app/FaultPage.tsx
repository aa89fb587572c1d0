import { useEffect, useState } from "react";
import {
  createLogbook,
  type LedgerFault,
  listLogbooks,
  openShelf,
  removeLogbook,
  type ShelvedLogbook,
} from "#db";
import { type Asked, type Surroundings, saveBackup } from "#live";
import { useDevice } from "#state/device.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import styles from "./App.module.css";
import { Notices } from "./Notices.tsx";

interface FaultPageProps {
  readonly fault: LedgerFault;
  readonly surroundings: Surroundings;
  readonly asked: Asked;
}

/**
 * The logbook could not be opened: why, and what can be done. Never advises to clear anything that may be intact; what
 * can still be read can be backed up, and the other logbooks stay within reach.
 */
export function FaultPage({ fault, surroundings, asked }: FaultPageProps) {
  const shelved = useShelvedAside(surroundings);
  const { logbook, change } = useDevice();
  const wanted = asked.name ?? logbook;
  const failed = shelved.find(({ name }) => name === wanted) ?? shelved[0];
  const others = shelved.filter((other) => other !== failed);

  const beginAfresh = async () => {
    const shelf = await openShelf(surroundings);
    if (failed !== undefined) await removeLogbook(shelf, failed.name);
    const { name } = await createLogbook(shelf, { title: "My logbook" });
    shelf.close();
    change(({ markers }) => {
      const kept = Object.entries(markers).filter(([of]) => others.some((other) => other.name === of));
      return { logbook: name, markers: Object.fromEntries(kept) };
    });
    window.location.hash = "#/data";
    asked.open(name);
  };
  const backUp = async (one: ShelvedLogbook) => {
    const shelf = await openShelf(surroundings);
    await saveBackup({ shelf, surroundings }, one).finally(() => shelf.close());
  };
  return (
    <main className={styles["main"]}>
      <div role="alert" className={styles["fault"]}>
        <h1>Lap Ledger cannot open your logbook</h1>
        <Notice
          tone="caution"
          actions={
            <>
              {fault.code === "gone" && (
                <Button size="between" variant="primary" onClick={() => void beginAfresh()}>
                  Begin a new logbook and restore a backup
                </Button>
              )}
              <Button size="between" onClick={() => window.location.reload()}>
                Reload
              </Button>
              <Button size="between" onClick={() => asked.open(asked.name)}>
                Try again
              </Button>
              {failed !== undefined && fault.code !== "gone" && (
                <Button size="between" onClick={() => void backUp(failed)}>
                  Save a backup
                </Button>
              )}
              {others.map((other) => (
                <Button key={other.name} size="between" onClick={() => asked.open(other.name)}>
                  Open <Name>{other.title}</Name>
                </Button>
              ))}
            </>
          }
        >
          <p>{fault.message}</p>
        </Notice>
      </div>
      <Notices />
    </main>
  );
}

/** The logbooks on the shelf, read by a connection of its own; none where that cannot be read either. */
function useShelvedAside(surroundings: Surroundings): readonly ShelvedLogbook[] {
  const [shelved, setShelved] = useState<readonly ShelvedLogbook[]>([]);
  useEffect(() => {
    let isLeft = false;
    const read = async () => {
      const shelf = await openShelf(surroundings);
      const all = await listLogbooks(shelf).finally(() => shelf.close());
      if (!isLeft) setShelved(all);
    };
    // What keeps the shelf from being read is the fault this page already tells of.
    read().catch(() => undefined);
    return () => {
      isLeft = true;
    };
  }, [surroundings]);
  return shelved;
}
