import { Suspense } from "react";
import { printAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { useIsTouch } from "../entry/useIsTouch.ts";
import { DemoButton } from "./DemoButton.tsx";
import { StartForm } from "./StartForm.tsx";
import styles from "./Welcome.module.css";

// The first field can be typed into before the picture and the way to the demo are there; their places are kept.
const DemoPicture = laterPart(() => import("./DemoPicture.tsx").then((file) => file.DemoPicture));
const LoadDemo = laterPart(() => import("./LoadDemo.tsx").then((file) => file.LoadDemo));

/**
 * An empty logbook: what the tool is, what it draws, and two ways on, all in sight at once. The first field has the focus but
 * on touch, where the keyboard would come up over the rest.
 */
export function Welcome() {
  const isTouch = useIsTouch();
  return (
    <div className={styles["welcome"]}>
      <div className={styles["intro"]}>
        <h1 tabIndex={-1}>A logbook for your practice laps</h1>
        <p className={styles["lead"]}>
          Type your lap times between two runs in the simulator, and read at once how the run was and, over
          the weeks, whether you are getting faster.
        </p>
      </div>
      <div className={styles["picture"]}>
        <FaultBoundary what="The picture">
          <Suspense fallback={null}>
            <DemoPicture />
          </Suspense>
        </FaultBoundary>
      </div>
      <section aria-label="Start a session" className={styles["start"]}>
        <StartForm
          isMain
          takesFocus={!isTouch}
          beside={
            <FaultBoundary what="The demo logbook">
              <Suspense fallback={<DemoButton disabled />}>
                <LoadDemo />
              </Suspense>
            </FaultBoundary>
          }
        />
      </section>
      <div className={styles["more"]}>
        <p>
          Everything stays in this browser: there is no account and no server. Lap times here are for
          simulators; they say nothing about driving on a road or a real circuit.
        </p>
        <p>
          You have a logbook already?{" "}
          <a className={styles["way"]} href={printAddress({ place: "data", part: "restore" })}>
            Restore a backup
          </a>
        </p>
      </div>
    </div>
  );
}
