import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "#ui/tokens.css";
import "#ui/base.css";
import { browserSurroundings, makeWorkerAsk, openAtStart, sendToWorker } from "#live";
import { useDevice } from "#state/device.ts";
import { shieldComposition } from "#ui/shieldComposition.ts";
import { App } from "./app/App.tsx";

shieldComposition(window);
const surroundings = browserSurroundings();
const opening = openAtStart(surroundings, useDevice.getState());
// The provider shows the fault; until it listens, the browser must not call it unhandled.
opening.catch(() => undefined);

const root = document.getElementById("root");
if (root === null) throw new Error("The page has no place for the app.");
createRoot(root).render(
  <StrictMode>
    <App opening={opening} surroundings={surroundings} ask={makeWorkerAsk()} sendOut={sendToWorker} />
  </StrictMode>,
);
