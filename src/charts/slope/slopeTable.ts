import { formatDelta, formatLapTime, formatSeconds, wayOf } from "#domain";
import type { ChartCell, ChartTable } from "../frame/chartTable.ts";

/** A pair of runs of a rig test with what was judged of either, ms. */
export interface SlopePair {
  /** From 1. */
  readonly number: number;
  readonly first: "A" | "B";
  readonly a: number;
  readonly b: number;
}

/** What the pairs are judged by: a usual lap is a time of day on the clock, the scatter of laps a length of time. */
export type SlopeOf = "usual" | "scatter";

/** One side of a pair as it is written: "1:24.31", "0.42 s". */
export function sayEnd(ms: number, of: SlopeOf): string {
  return of === "usual" ? formatLapTime(Math.round(ms / 10) * 10, 2) : formatSeconds(ms, 2);
}

const ways: Readonly<Record<SlopeOf, Readonly<Record<ReturnType<typeof wayOf>, string>>>> = {
  usual: { faster: "B faster", slower: "B slower", "the same": "the same" },
  scatter: { faster: "B steadier", slower: "B less even", "the same": "the same" },
};

/** Which way a pair points: "B faster". */
export function sayPairWay({ a, b }: Pick<SlopePair, "a" | "b">, of: SlopeOf): string {
  return ways[of][wayOf(b - a, 2)];
}

/** A pair as it is read out: "pair 3, B first: A 1:24.31, B 1:24.10, −0.21 s, B faster" */
export function sayPair(pair: SlopePair, of: SlopeOf): string {
  const { number, first, a, b } = pair;
  const ends = `A ${sayEnd(a, of)}, B ${sayEnd(b, of)}`;
  return `pair ${number}, ${first} first: ${ends}, ${formatDelta(b - a, 2)} s, ${sayPairWay(pair, of)}`;
}

/** The pairs as a table, in the order in which they were driven. */
export function slopeTable(pairs: readonly SlopePair[], of: SlopeOf): ChartTable {
  const end = (ms: number): ChartCell => ({ text: sayEnd(ms, of), value: Math.round(ms) / 1000 });
  return {
    columns: [
      { key: "pair", title: "pair", csvTitle: "pair" },
      { key: "first", title: "first", csvTitle: "first" },
      { key: "a", title: "with A", csvTitle: "a_s", figures: true },
      { key: "b", title: "with B", csvTitle: "b_s", figures: true },
      { key: "difference", title: "B less A", csvTitle: "b_less_a_s", figures: true, strong: true },
    ],
    rows: pairs.map(({ number, first, a, b }) => ({
      id: String(number),
      cells: {
        pair: { text: String(number), value: number },
        first: { text: first },
        a: end(a),
        b: end(b),
        difference: { text: `${formatDelta(b - a, 2)} s`, value: Math.round(b - a) / 1000 },
      },
    })),
  };
}
