import { Suspense } from "react";
import { Columns } from "#ui/Columns.tsx";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { Part } from "#ui/Part.tsx";
import styles from "../LogScreen.module.css";
import { LatelyComing } from "./LatelyComing.tsx";
import { StartForm } from "./StartForm.tsx";

// Both read the book before they show anything, and the form does not wait for their script.
const Lately = laterPart(() => import("./Lately.tsx").then((file) => file.Lately));
const LastSessions = laterPart(() => import("./LastSessions.tsx").then((file) => file.LastSessions));

/** No session is open: the combos driven last, the form for any other, and the last sessions. */
export function Begin() {
  return (
    <div className={styles["begin"]}>
      <h1 tabIndex={-1}>Start a session</h1>
      <Columns>
        <FaultBoundary what="The combos driven last">
          <Suspense fallback={<LatelyComing />}>
            <Lately />
          </Suspense>
        </FaultBoundary>
        <div className={styles["other"]}>
          <Part title="Another combo, or other details">
            <StartForm />
          </Part>
        </div>
      </Columns>
      <FaultBoundary what="The last sessions">
        <Suspense fallback={null}>
          <LastSessions />
        </Suspense>
      </FaultBoundary>
    </div>
  );
}
