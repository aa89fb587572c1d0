import { useEffect } from "react";
import { useAddress } from "#state/address.ts";
import { timeId } from "./LapRow.tsx";

/** Brings the lap that the address names into sight and gives it the focus, each time one is named. */
export function useNamedLap(): void {
  const address = useAddress();
  const lapId = address.place === "log" ? address.lapId : undefined;
  useEffect(() => {
    if (lapId === undefined) return;
    const time = document.getElementById(timeId(lapId));
    time?.scrollIntoView?.({ block: "center" });
    time?.focus({ preventScroll: true });
  }, [lapId]);
}
