import { IntervalLine } from "#charts/interval/IntervalLine.tsx";
import type { RigTestReport } from "#stats";
import { shiftOf } from "#words";

interface TestIntervalProps {
  readonly report: RigTestReport;
  /** The setting it is seen from. */
  readonly side: "A" | "B";
  /** How far the line goes at least, ms. */
  readonly reach?: number;
}

/** The interval of a rig test that has a verdict, between faster and slower, or steadier and less steady. */
export function TestInterval({ report: { verdict, figure }, side, reach }: TestIntervalProps) {
  if (!verdict.known) return null;
  return (
    <IntervalLine
      {...shiftOf(verdict.value, side)}
      of={figure === "usual" ? "time" : "evenness"}
      {...(reach !== undefined && { reach })}
    />
  );
}
