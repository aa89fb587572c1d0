import { useMemo } from "react";
import { LapStrip } from "#charts/strip/LapStrip.tsx";
import type { StripLines } from "#charts/strip/stripScale.ts";
import { numberedRuns } from "#combo";
import { type Run, stripLaps } from "#domain";

interface SessionStripProps {
  /** Undefined while they are being read. */
  readonly runs: readonly Run[] | undefined;
  readonly lines?: StripLines | undefined;
  /** "Wed 30 Sep 2026" */
  readonly name: string;
}

/** A session in the row of a list: its laps in order, run by run. Nothing stands there for one without laps. */
export function SessionStrip({ runs, lines, name }: SessionStripProps) {
  const laps = useMemo(() => (runs === undefined ? [] : stripLaps(numberedRuns(runs))), [runs]);
  if (laps.length === 0) return null;
  return <LapStrip laps={laps} lines={lines} size="small" name={name} />;
}
