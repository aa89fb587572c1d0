import { useRef } from "react";
import { type KeptBecause, type KeptCopy, packOf } from "#db";
import { sayNoted } from "#domain";
import { useKeptCopies, useLogbook, useShelfWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { sayBytes } from "./backupWords.ts";
import { Incoming } from "./Incoming.tsx";
import styles from "./LogbooksPart.module.css";
import { useLook } from "./useLook.ts";

const because: Readonly<Record<KeptBecause, string>> = {
  session: "after a session",
  merge: "before a merge",
  replace: "before it was replaced",
};

/** States of the open logbook kept inside this browser: after the last sessions, before merges and replacements. */
export function CopiesPart({ titles }: { readonly titles: readonly string[] }) {
  const copies = useKeptCopies();
  const { surroundings } = useLogbook();
  const shelfWrite = useShelfWrite();
  const looking = useLook();
  const list = useRef<HTMLUListElement>(null);
  const when = (at: number) => sayNoted(at, surroundings.clock(), surroundings.zone());
  const look = (copy: KeptCopy) =>
    void shelfWrite(async (shelf) => looking.look(when(copy.madeAt), await packOf(shelf, copy.id)));
  if (copies === undefined) return null;
  return (
    <Part title="Earlier states" ruled>
      <p>
        {copies.length === 0 && "None kept yet. "}
        The logbook as it was after each of the last ten sessions, before the last merges, and for thirty days
        of use before it was replaced. They lie in this browser and go when it is cleared, so they are no
        backup.
      </p>
      <Incoming
        looking={looking}
        titles={titles}
        first="new"
        onLeave={() => list.current?.querySelector("button")?.focus()}
      />
      {copies.length > 0 && (
        <ul ref={list} className={styles["list"]}>
          {copies.map((copy) => (
            <li key={copy.id} className={styles["logbook"]}>
              <div id={`copy-${copy.id}`}>
                <div className={styles["title"]}>{when(copy.madeAt)}</div>
                <div className={styles["about"]}>
                  {because[copy.why]} · {copy.sessions} {copy.sessions === 1 ? "session" : "sessions"},{" "}
                  {copy.laps} {copy.laps === 1 ? "lap" : "laps"} · {sayBytes(copy.bytes)}
                </div>
              </div>
              <div className={styles["buttons"]}>
                <Button size="between" aria-describedby={`copy-${copy.id}`} onClick={() => look(copy)}>
                  Look at it
                </Button>
              </div>
            </li>
          ))}
        </ul>
      )}
    </Part>
  );
}
