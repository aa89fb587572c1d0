import { useMemo } from "react";
import { LapStrip, type LapStripProps } from "#charts/strip/LapStrip.tsx";
import type { StripLines } from "#charts/strip/stripScale.ts";
import type { RunVerdict } from "#stats";
import { useRunStrip } from "../session/RunStrips.tsx";
import type { SaidRun } from "../session/sessionFigures.ts";

interface VerdictStripProps extends Pick<LapStripProps, "size" | "onOpen"> {
  readonly said: SaidRun;
  readonly verdict: RunVerdict | undefined;
}

/** The laps of a run as its verdict sees them; nothing where the run has none written down. */
export function VerdictStrip({ said: { run, number }, verdict, ...shown }: VerdictStripProps) {
  const strip = useRunStrip(run.id);
  const lines = useMemo(() => seenAgainst(strip?.lines, verdict), [strip?.lines, verdict]);
  if (strip === undefined || strip.laps.length === 0) return null;
  return <LapStrip laps={strip.laps} lines={lines} name={`Run ${number}`} {...shown} />;
}

/** The laps are seen against what the verdict was given against, in the place of their own usual lap. */
function seenAgainst(lines: StripLines | undefined, verdict: RunVerdict | undefined): StripLines | undefined {
  const against = verdict !== undefined && "against" in verdict ? verdict.against : undefined;
  if (against?.from !== "level") return lines;
  return { pb: lines?.pb, target: lines?.target, level: { ms: against.referenceMs } };
}
