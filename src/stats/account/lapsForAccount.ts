import { inAccount } from "../digest/digestFlags.ts";
import type { PlacedLap } from "../laps/sessionLaps.ts";
import type { LapForAccount } from "./timeAccount.ts";

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
