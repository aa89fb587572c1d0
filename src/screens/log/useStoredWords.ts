import { useState } from "react";
import { formatLapTime, type Id } from "#domain";
import type { LapDifferences } from "#stats";

/**
 * What is said when a lap has come into the ledger: "Lap 4 stored, 1:23.456, a new PB". Said once, when the lap is
 * first seen there; what happens to it later is not news of it.
 */
export function useStoredWords(
  rows: ReadonlyMap<Id, readonly LapDifferences[]>,
  storedId: Id | undefined,
): string {
  const [said, setSaid] = useState<{ readonly id: Id; readonly words: string }>();
  if (storedId !== undefined && said?.id !== storedId) {
    const row = [...rows.values()].flat().find(({ lap }) => lap.id === storedId);
    if (row) setSaid({ id: storedId, words: words(row) });
  }
  return said?.words ?? "";
}

function words({ lap, number, isBest }: LapDifferences): string {
  const time = lap.ms === undefined ? "no time" : formatLapTime(lap.ms, lap.decimals);
  return `Lap ${number} stored, ${time}${isBest ? ", a new PB" : ""}`;
}
