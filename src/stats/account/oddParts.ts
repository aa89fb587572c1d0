import { type AccountLines, type LapInAccount, type LineOfLap, lineOf } from "./accountSteps.ts";

/** What laps confirmed as odd did to one line of an account: most of it. */
export interface OddPart {
  readonly line: LineOfLap;
  /** Such laps in the line. */
  readonly laps: number;
  /** The slowest of them, ms. */
  readonly slowest: number;
  /** What they add to the line, ms a lap. */
  readonly perLap: number;
}

const lines: readonly LineOfLap[] = ["mistakes", "repeatability", "others"];

/**
 * The lines of which laps confirmed as odd make the larger part.
 * @param laps all laps confirmed as odd
 * @param account with them
 * @param without the account of the same sessions without them
 */
export function oddParts(
  laps: readonly LapInAccount[],
  account: AccountLines,
  without: AccountLines,
): readonly OddPart[] {
  return lines.flatMap((line) => {
    const times = laps.flatMap((lap) => (lineOf(lap) === line && lap.ms !== undefined ? [lap.ms] : []));
    const perLap = account[line] - without[line];
    if (times.length === 0 || perLap <= 0 || perLap * 2 <= account[line]) return [];
    return [{ line, laps: times.length, slowest: Math.max(...times), perLap }];
  });
}
