import { useEffect, useState } from "react";
import { formatLapTime, type Id } from "#domain";
import type { LapDifferences } from "#stats";
import { bringIntoSight } from "../laps/LapRow.tsx";

/**
 * What is said when laps have come into the ledger: "Lap 4 stored, 1:23.456, a new PB", and of a pasted block what the
 * run says with it. Said once, when the laps are first seen there; what happens to them later is not news of them. The
 * last of them then comes into sight. Laps from elsewhere move nothing: another tab may type while the driver looks.
 * @param stored the laps stored last from here
 * @param finding what their run says
 */
export function useStoredWords(
  rows: ReadonlyMap<Id, readonly LapDifferences[]>,
  stored: readonly Id[],
  finding: string | undefined,
): string {
  const [said, setSaid] = useState<{ readonly stored: readonly Id[]; readonly words: string }>();
  const lastId = stored.at(-1);
  if (lastId !== undefined && said?.stored !== stored) {
    const row = [...rows.values()].flat().find(({ lap }) => lap.id === lastId);
    if (row) setSaid({ stored, words: stored.length === 1 ? ofLap(row) : ofBlock(stored.length, finding) });
  }
  const seenId = said?.stored.at(-1);
  useEffect(() => {
    if (seenId !== undefined) bringIntoSight(seenId);
  }, [seenId]);
  return said?.words ?? "";
}

function ofLap({ lap, number, isBest }: LapDifferences): string {
  const time = lap.ms === undefined ? "no time" : formatLapTime(lap.ms, lap.decimals);
  return `Lap ${number} stored, ${time}${isBest ? ", a new PB" : ""}`;
}

function ofBlock(count: number, finding = ""): string {
  return `${count.toLocaleString("en")} laps stored. ${finding}`.trim();
}
