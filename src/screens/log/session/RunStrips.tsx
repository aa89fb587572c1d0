import { createContext, type ReactNode, useContext, useDeferredValue, useMemo } from "react";
import type { Id } from "#domain";
import { BarsOf } from "../laps/LapBar.tsx";
import { type RunStrip, type StripsOf, sessionStrips } from "./sessionStrips.ts";

const Strips = createContext<ReadonlyMap<Id, RunStrip>>(new Map());

interface RunStripsProps {
  /** The same object for as long as nothing in it has changed. */
  readonly of: StripsOf;
  readonly children: ReactNode;
}

/**
 * Offers the strip of each run to what is inside. Each lap that is stored moves them all: they are worked out and drawn behind
 * the lap's own row, and what stands around them is not drawn again for it.
 */
export function RunStrips({ of, children }: RunStripsProps) {
  const late = useDeferredValue(of);
  const strips = useMemo(() => sessionStrips(late), [late]);
  return <Strips value={strips}>{children}</Strips>;
}

/** The strip of one run; undefined while a run that has just begun has none yet. */
export function useRunStrip(runId: Id): RunStrip | undefined {
  return useContext(Strips).get(runId);
}

/** Gives the lap table among its children what the bars of its run are drawn by. */
export function RunBars({ runId, children }: { readonly runId: Id; readonly children: ReactNode }) {
  return <BarsOf bars={useRunStrip(runId)?.bars}>{children}</BarsOf>;
}
