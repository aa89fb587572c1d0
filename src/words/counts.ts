import { type LapCounts, type LapPlace, lapPlaces, remarksNamed } from "#domain";
import { counted } from "./counted.ts";

const words: Readonly<Record<LapPlace, string>> = {
  pace: "pace",
  settling: "settling in",
  cut: "cut",
  mistake: "with a mistake",
  others: `with ${remarksNamed("others")}`,
  noTime: "without a time",
  outOrIn: "out or in",
  partly: "in runs written in part",
  easy: "easy or learning",
  test: "in a rig test",
  wet: "damp or wet",
  drill: "drill",
  warmUp: "warm-up",
  race: "race",
  notWritten: "not written down",
};

/**
 * Where all laps driven went; the parts add up to the whole.
 * @example "of 64 laps: 41 pace, 3 without a time, 8 damp or wet, 12 drill"
 */
export function sayCounts(counts: LapCounts): string {
  if (counts.driven === 0) return "no laps yet";
  const parts = lapPlaces
    .filter((place) => counts[place] > 0)
    .map((place) => `${counts[place]} ${words[place]}`);
  return `of ${counted(counts.driven, "lap")}: ${parts.join(", ")}`;
}
