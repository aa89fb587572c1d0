import { useMemo } from "react";
import { stripLaps } from "#domain";
import { LapStrip } from "./LapStrip.tsx";
import type { StripLines } from "./stripScale.ts";

interface SessionStripProps {
  /** By the numbers they go by in their session. Undefined while they are being read. */
  readonly runs: Parameters<typeof stripLaps>[0] | undefined;
  readonly lines?: StripLines | undefined;
  /** "Wed 30 Sep 2026" */
  readonly name: string;
}

/** A session in the row of a list: its laps in order, run by run. Nothing stands there for one without laps. */
export function SessionStrip({ runs, lines, name }: SessionStripProps) {
  const laps = useMemo(() => (runs === undefined ? [] : stripLaps(runs)), [runs]);
  if (laps.length === 0) return null;
  return <LapStrip laps={laps} lines={lines} size="small" name={name} />;
}
