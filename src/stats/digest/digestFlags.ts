import type { PlacedLap } from "../laps/sessionLaps.ts";

/** What a bit of a digest's flags says about a lap. */
export const lapFlags = {
  timed: 1,
  clean: 2,
  pace: 4,
  exact: 8,
  mistake: 16,
  othersOnTrack: 32,
  cut: 64,
  outOrIn: 128,
  noTime: 256,
  /** Of a pace run written lap by lap, after the settling laps: it belongs to the time account. */
  account: 512,
  /** Clean, and not taken back as a best. */
  mayBeBest: 1024,
  /** Clean and of a pace run, whatever its effort and surface. */
  practice: 2048,
} as const;

const accountPlaces: readonly PlacedLap["place"][] = ["pace", "cut", "mistake", "others", "noTime"];

/** Whether a lap belongs to the time account or is counted beside it. */
export function inAccount(placed: Pick<PlacedLap, "place">): boolean {
  return accountPlaces.includes(placed.place);
}

const practicePlaces: readonly PlacedLap["place"][] = ["pace", "easy", "wet"];

/** The flags of one lap. */
export function flagsOf(placed: PlacedLap): number {
  const kinds = placed.lap.remarks.map((remark) => remark.kind);
  const has = (flag: boolean, bit: number) => (flag ? bit : 0);
  return (
    has(placed.isTimed, lapFlags.timed) |
    has(placed.isClean, lapFlags.clean) |
    has(placed.place === "pace", lapFlags.pace) |
    has(placed.isExact, lapFlags.exact) |
    has(placed.isMistake, lapFlags.mistake) |
    has(kinds.includes("traffic") || kinds.includes("slow"), lapFlags.othersOnTrack) |
    has(kinds.includes("cut"), lapFlags.cut) |
    has(kinds.includes("out") || kinds.includes("in"), lapFlags.outOrIn) |
    has(placed.lap.ms === undefined, lapFlags.noTime) |
    has(inAccount(placed), lapFlags.account) |
    has(placed.mayBeBest, lapFlags.mayBeBest) |
    has(placed.isClean && practicePlaces.includes(placed.place), lapFlags.practice)
  );
}
