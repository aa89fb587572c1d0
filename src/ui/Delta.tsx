import type { ReactNode } from "react";
import { formatDelta, type Way, wayOf } from "#domain";
import { Ink } from "./Ink.tsx";

const tones = { faster: "gain", slower: "loss", "the same": "plain" } as const;

interface DeltaProps {
  readonly ms: number;
  readonly decimals: number;
  /** Of a lap that was not clean: what it is faster by is no gain, so it has no ink. */
  readonly isPlain?: boolean;
  /** What stands behind the figure, from the word for its way. */
  readonly children: (way: Way) => ReactNode;
}

/** A difference of times: faster or slower by a sign and a word first, then by the ink; what is the same is neither. */
export function Delta({ ms, decimals, isPlain = false, children }: DeltaProps) {
  const way = wayOf(ms, decimals);
  return (
    <Ink tone={isPlain ? "plain" : tones[way]}>
      {formatDelta(ms, decimals)}
      {children(way)}
    </Ink>
  );
}
