import type { LapForAccount } from "../account/timeAccount.ts";
import { inAccount } from "./digestFlags.ts";
import type { PlacedLap } from "./sessionLaps.ts";

/** The laps of a session's time account: of pace runs written lap by lap, after the settling laps. */
export function lapsForAccount(laps: readonly PlacedLap[]): LapForAccount[] {
  return laps
    .filter((placed) => inAccount(placed))
    .map(({ lap: { ms, remarks, isNotBest }, place }) => ({
      ms,
      remarks,
      pace: place === "pace",
      isNotBest,
    }));
}
