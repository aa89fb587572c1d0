import { type ComponentType, Suspense, useEffect, useRef } from "react";
import type { Place } from "#state/address.ts";
import { useAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { LogScreen } from "../screens/log/LogScreen.tsx";
import { BackupButton } from "./BackupButton.tsx";

const screens: Readonly<Record<Place, ComponentType>> = {
  log: LogScreen,
  review: laterPart(() => import("../screens/review/ReviewScreen.tsx").then((file) => file.ReviewScreen)),
  targets: laterPart(() => import("../screens/targets/TargetsScreen.tsx").then((file) => file.TargetsScreen)),
  rig: laterPart(() => import("../screens/rig/RigScreen.tsx").then((file) => file.RigScreen)),
  corners: laterPart(() => import("../screens/corners/CornersScreen.tsx").then((file) => file.CornersScreen)),
  data: laterPart(() => import("../screens/data/DataScreen.tsx").then((file) => file.DataScreen)),
};

const titles: Readonly<Record<Place, string>> = {
  log: "Log",
  review: "Review",
  targets: "Targets",
  rig: "Rig",
  corners: "Corners",
  data: "Data",
};

/** The place the address names. On coming to another place the focus goes to its beginning. */
export function Screen() {
  const { place } = useAddress();
  const Place = screens[place];
  const before = useRef(place);
  useEffect(() => {
    document.title = `${titles[place]} · Lap Ledger`;
    if (before.current === place) return;
    before.current = place;
    window.scrollTo(0, 0);
    if (place !== "log") document.getElementById("main")?.focus({ preventScroll: true });
  }, [place]);
  return (
    <FaultBoundary key={place} what={titles[place]} backup={<BackupButton />}>
      <Suspense fallback={<p>Opening {titles[place]}</p>}>
        <Place />
      </Suspense>
    </FaultBoundary>
  );
}
