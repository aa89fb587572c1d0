import type { Drive } from "./evening.ts";
import type { Mishap } from "./mishap.ts";

/** What the generator meant a lap to be; each lap driven has one of these. */
export const meanings = [
  "pace",
  "cut",
  "mistake",
  "others",
  "noTime",
  "outOrIn",
  "partly",
  "easy",
  "test",
  "wet",
  "drill",
  "warmUp",
  "race",
  "notWritten",
] as const;
export type Meaning = (typeof meanings)[number];

/** Laps driven of each meaning. */
export type Meant = Record<Meaning, number>;

/** No laps. */
export function noLaps(): Meant {
  return Object.fromEntries(meanings.map((meaning) => [meaning, 0])) as Meant;
}

/** What a whole run is for, where no lap of it is meant to tell the pace. */
export function meaningOfRun(drive: Drive): Meaning | undefined {
  if (drive.isPairOfTest) return "test";
  if (drive.race) return "race";
  if (drive.kind === "warm-up") return "warmUp";
  if (drive.kind === "drill") return "drill";
  if (drive.surface !== undefined) return "wet";
  if (drive.effort === "easy" || drive.effort === "learning") return "easy";
  return drive.remembered === undefined ? undefined : "partly";
}

/** What one lap of a pace run is, by what happened on it. */
export function meaningOfLap({ remarks, isWithoutTime }: Mishap): Meaning {
  if (isWithoutTime) return "noTime";
  switch (remarks[0]?.kind) {
    case undefined:
      return "pace";
    case "out":
    case "in":
      return "outOrIn";
    case "cut":
      return "cut";
    case "traffic":
    case "slow":
      return "others";
    default:
      return "mistake";
  }
}

/** Counts the laps of a run among what they are meant to be. */
export function countMeant(meant: Meant, drive: Drive, laps: readonly { readonly mishap: Mishap }[]): void {
  const written = drive.isSummary ? [] : laps.slice(0, drive.remembered);
  for (const { mishap } of written) meant[meaningOfRun(drive) ?? meaningOfLap(mishap)]++;
  meant.notWritten += laps.length - written.length;
}
