import type { Figure } from "#domain";
import { type LineToWorkOn, largestLine } from "./largestLine.ts";
import type { SectorAccount } from "./sectorAccount.ts";
import type { TimeAccount } from "./timeAccount.ts";

/** What to work on next, and where it is largest. */
export interface WorkOn {
  readonly line: LineToWorkOn;
  /** Loss of that line, ms a lap. */
  readonly ms: number;
  /** Sector with the largest gap, from 0; known with sector times and a line other than mistakes. */
  readonly sector: number | undefined;
  /** Laps confirmed as odd make most of a line, and all of them were left aside for this. */
  readonly isOddAside: boolean;
}

/** What to work on, of an account and the sectors of the same laps; undefined where nothing of the driver's is lost. */
export function workOn(account: Figure<TimeAccount>, sectors: Figure<SectorAccount>): WorkOn | undefined {
  const largest = account.known ? largestLine(account.value) : undefined;
  if (!account.known || largest === undefined) return undefined;
  const sector = sectors.known && largest.line !== "mistakes" ? sectors.value.largest : undefined;
  return { ...largest, sector, isOddAside: account.value.odd !== undefined };
}
