import { Suspense, useEffect } from "react";
import { type Ask, LogbookProvider, type Opened, type SendOut, type Surroundings } from "#live";
import { useDevice } from "#state/device.ts";
import { useErasing } from "#state/erasing.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";
import styles from "./App.module.css";
import { Bar } from "./Bar.tsx";
import { FaultPage } from "./FaultPage.tsx";
import { Notices } from "./Notices.tsx";
import { Screen } from "./Screen.tsx";
import { StatusNotice } from "./StatusNotice.tsx";
import { useKeys } from "./useKeys.ts";
import { useMarker } from "./useMarker.ts";
import { Waiting } from "./Waiting.tsx";

const StandingNotices = laterPart(() => import("./StandingNotices.tsx").then((file) => file.StandingNotices));
const Erasing = laterPart(() => import("./Erasing.tsx").then((file) => file.Erasing));

interface AppProps {
  readonly opening: Promise<Opened>;
  readonly surroundings: Surroundings;
  readonly ask: Ask;
  readonly sendOut: SendOut;
}

/** The whole page around the open logbook. */
export function App({ opening, surroundings, ask, sendOut }: AppProps) {
  const theme = useDevice((device) => device.theme);
  useEffect(() => {
    if (theme === "system") delete document.documentElement.dataset["theme"];
    else document.documentElement.dataset["theme"] = theme;
  }, [theme]);

  const isErasing = useErasing(({ isAsked }) => isAsked);
  if (isErasing)
    return (
      <FaultBoundary what="Erasing">
        <Suspense fallback={null}>
          <Erasing />
        </Suspense>
      </FaultBoundary>
    );
  return (
    <LogbookProvider
      opening={opening}
      surroundings={surroundings}
      ask={ask}
      sendOut={sendOut}
      waiting={<Waiting />}
      sayFault={(fault, asked) => <FaultPage fault={fault} surroundings={surroundings} asked={asked} />}
    >
      <Shell />
    </LogbookProvider>
  );
}

function Shell() {
  useKeys();
  useMarker();
  return (
    <>
      <button type="button" className={styles["skip"]} onClick={toMain}>
        To the page
      </button>
      <Bar />
      <StatusNotice />
      <FaultBoundary what="What the app does by itself">
        <Suspense fallback={null}>
          <StandingNotices />
        </Suspense>
      </FaultBoundary>
      <main id="main" tabIndex={-1} className={styles["main"]}>
        <Screen />
      </main>
      <Notices />
    </>
  );
}

/** The hash names the place, so the way past the bar is a button, not a link. */
function toMain() {
  document.getElementById("main")?.focus();
}
