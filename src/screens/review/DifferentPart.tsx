import { secondTicks } from "#charts/axes/secondTicks.ts";
import { DistributionChart } from "#charts/distribution/DistributionChart.tsx";
import { RangeRowsChart } from "#charts/rangeRows/RangeRowsChart.tsx";
import { formatDelta } from "#domain";
import {
  factorsReading,
  factorsTitle,
  nowBeatsSays,
  shiftReading,
  shiftTitle,
  thirdsReading,
  thirdsTitle,
} from "#words";
import { FactorTable } from "./FactorTable.tsx";
import { IndividualPart } from "./IndividualPart.tsx";
import { LeftOut } from "./LeftOut.tsx";
import type { Looked } from "./looked.ts";
import { NotYet } from "./NotYet.tsx";
import { differenceRows } from "./reviewCharts.ts";

/** What was different? Now against before, late against early, by what the laps were driven with, lap by lap. */
export default function DifferentPart({ looked }: { readonly looked: Looked }) {
  const { review, comboName, today, before, onSessions } = looked;
  const about = { asOf: today, level: 3 } as const;
  const rows = differenceRows(review);
  return (
    <>
      {review.distribution.now !== undefined && (
        <DistributionChart
          {...about}
          title={
            before === undefined || !review.against.known
              ? "How the pace laps spread"
              : `Pace laps now beside those of ${before}`
          }
          reading={
            before === undefined || !review.against.known
              ? ""
              : `${shiftTitle(review, before)}. ${nowBeatsSays(review, before)} ${shiftReading(review)}`
          }
          fileName={`${comboName} lap times`}
          distribution={review.distribution}
          nowWords="now"
          beforeWords="before"
        />
      )}
      {!review.thirds.known && <NotYet title={thirdsTitle(review)}>{thirdsReading(review)}</NotYet>}
      {rows.length > 0 && (
        <RangeRowsChart
          {...about}
          title={review.thirds.known ? thirdsTitle(review) : factorsTitle(review.factors)}
          reading={
            review.thirds.known
              ? `${thirdsReading(review)} ${factorsTitle(review.factors)}.`
              : factorsReading(review.factors)
          }
          fileName={`${comboName} differences`}
          rows={rows}
          axisTitle="seconds a lap; line: very likely range; left is faster"
          axisOf={(values) => secondTicks(values)}
          say={(seconds) => `${formatDelta(Math.round(seconds * 1000))} s`}
          csvUnit="s"
          hasZero
        />
      )}
      <FactorTable factors={review.factors} reading={factorsReading(review.factors)} />
      <LeftOut onSessions={onSessions}>
        Wet, damp and easy laps stand in the table only, in no other figure of this page.
      </LeftOut>
      <IndividualPart looked={looked} />
    </>
  );
}
