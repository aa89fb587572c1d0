import { aboutRemark, mayBeBest, remarkInWords, type StripLap, stripMark } from "#domain";
import { counted } from "./counted.ts";
import { sayLapTime } from "./lapTime.ts";

/**
 * What a strip of laps shows, for those who do not see it.
 * @param name what it is the strip of: "Run 2"
 * @param drawn how many of the laps are drawn, where not all are
 * @example "Run 2: 8 laps, best 1:23.790, 2 with a mistake, 1 cut"
 */
export function sayStrip(name: string, laps: readonly StripLap[], drawn = laps.length): string {
  if (laps.length === 0) return `${name}: no laps`;
  const bests = laps.filter((lap) => mayBeBest({ remarks: [], ...lap }));
  const best = bests.length === 0 ? undefined : bests.reduce((a, b) => ((b.ms ?? 0) < (a.ms ?? 0) ? b : a));
  const number = (has: (lap: StripLap) => boolean, words: string) => {
    const found = laps.filter(has).length;
    return found === 0 ? undefined : `${found} ${words}`;
  };
  const parts = [
    counted(laps.length, "lap"),
    best?.ms !== undefined && `best ${sayLapTime(best.ms, best.decimals ?? 3)}`,
    number((lap) => (lap.remarks ?? []).some(({ kind }) => aboutRemark(kind).mistake), "with a mistake"),
    number((lap) => stripMark(lap) === "cut", "cut"),
    number((lap) => ["traffic", "slow"].includes(stripMark(lap)), "held up"),
    number((lap) => stripMark(lap) === "noTime", "without a time"),
  ];
  return `${name}: ${parts.filter(Boolean).join(", ")}${drawn < laps.length ? `. ${sayStripThinned(drawn, laps.length)}` : ""}`;
}

/** "120 of 500 laps are drawn" */
export function sayStripThinned(drawn: number, all: number): string {
  return `${drawn} of ${all} laps are drawn`;
}

/**
 * One lap of a strip.
 * @param far beyond which edge it lies, drawn there under a chevron
 * @example "Lap 7: 1:25.900, cut, corner 7"
 * @example "Lap 4: 1:38.511, spin, slower than the strip reaches"
 */
export function sayStripLap(lap: StripLap, far?: "up" | "down"): string {
  const { name, ms, decimals = 3, remarks = [], isFromMemory, surface = "dry", isBest } = lap;
  const parts = [
    ms === undefined ? "no time" : sayLapTime(ms, decimals),
    isBest && "PB",
    ...remarks.map(remarkInWords),
    isFromMemory && "from memory",
    surface !== "dry" && surface,
    ms !== undefined && far !== undefined && `${far === "up" ? "slower" : "faster"} than the strip reaches`,
  ];
  return `${name}: ${parts.filter(Boolean).join(", ")}`;
}
