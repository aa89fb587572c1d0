import { useEffect, useState } from "react";
import { useOpening } from "#state/opening.ts";
import { Notice } from "#ui/Notice.tsx";
import styles from "./App.module.css";

/** A tab that answers at once is not worth a word. */
const patienceMs = 1000;

/** Stands until the logbook is open; when another tab holds it up, says which, and goes on by itself. */
export function Waiting() {
  const isBlocked = useOpening((opening) => opening.isBlocked);
  const [isLong, setLong] = useState(false);
  useEffect(() => {
    const clock = setTimeout(() => setLong(true), patienceMs);
    return () => clearTimeout(clock);
  }, []);
  return (
    <div className={styles["waiting"]} role="status">
      {isBlocked && isLong ? (
        <Notice tone="caution">
          <p>
            <strong>Another tab of Lap Ledger is open in an older version.</strong> Close it; this page goes
            on by itself. Nothing is lost: what was typed there is kept.
          </p>
        </Notice>
      ) : (
        <p>Opening your logbook</p>
      )}
    </div>
  );
}
