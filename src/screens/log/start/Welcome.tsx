import { lazy, Suspense } from "react";
import { printAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { Part } from "#ui/Part.tsx";
import styles from "../LogScreen.module.css";
import { StartForm } from "./StartForm.tsx";

const LoadDemo = lazy(() => import("./LoadDemo.tsx").then((file) => ({ default: file.LoadDemo })));

/** An empty logbook: what the tool is for, and three plain ways on. */
export function Welcome() {
  return (
    <div className={styles["welcome"]}>
      <div className={styles["intro"]}>
        <h1 tabIndex={-1}>A logbook for your practice laps</h1>
        <p className={styles["lead"]}>
          Between two runs you type a few lap times and read at once what the run says. Over weeks the ledger
          answers: am I getting faster, am I getting steadier, where does the time go, will I reach the
          target. It says how sure it is, and when there are too few laps to know.
        </p>
        <p>
          Everything stays in this browser. There is no account and no server. Lap times here are for
          simulators; they say nothing about driving on a road or a real circuit.
        </p>
      </div>
      <Part title="Start a session">
        <StartForm />
      </Part>
      <Part title="Or look around first">
        <FaultBoundary what="The demo logbook">
          <Suspense fallback={null}>
            <LoadDemo />
          </Suspense>
        </FaultBoundary>
      </Part>
      <Part title="Or bring your own logbook back">
        <p>
          <a className={styles["way"]} href={printAddress({ place: "data" })}>
            Restore a backup
          </a>
        </p>
      </Part>
    </div>
  );
}
