import { percentTicks } from "#charts/axes/percentTicks.ts";
import { ConsistencyChart } from "#charts/consistency/ConsistencyChart.tsx";
import { RangeRowsChart } from "#charts/rangeRows/RangeRowsChart.tsx";
import {
  sayCleanShare,
  sayNearTheBest,
  sayShareBefore,
  scatterShiftSays,
  steadinessReading,
  steadinessTitle,
} from "#words";
import { LeftOut } from "./LeftOut.tsx";
import { type Looked, openSession } from "./looked.ts";
import { consistencyOf, shareRows, sharesBefore } from "./reviewCharts.ts";
import { SpreadPart } from "./SpreadPart.tsx";

interface SteadierPartProps {
  readonly looked: Looked;
  readonly marginPercent: number;
}

/** Am I getting steadier? Scatter of each session, share of clean laps, laps near the best. */
export default function SteadierPart({ looked, marginPercent }: SteadierPartProps) {
  const { review, comboName, today, before, onSessions } = looked;
  const { cleanShare, nearTheBest, points } = review;
  const earlier = sharesBefore(review);
  const about = { asOf: today, level: 3 } as const;
  const against = before === undefined || !review.against.known ? "" : scatterShiftSays(review, before);
  const unknown = points.filter(
    (point) => point.isPresentPage && point.laps > 0 && point.consistency === undefined,
  ).length;
  const shares = [
    sayShareBefore(cleanShare, earlier?.cleanShare, ["clearly more clean laps", "clearly fewer clean laps"]),
    `${sayNearTheBest(nearTheBest, marginPercent)} now; ${sayShareBefore(nearTheBest, earlier?.nearTheBest, ["clearly more near the best", "clearly fewer near the best"])}`,
  ];
  return (
    <>
      <ConsistencyChart
        {...about}
        title={steadinessTitle(review)}
        reading={`${steadinessReading(review)}${against === "" ? "" : ` ${against}`}`}
        fileName={`${comboName} consistency`}
        sessions={consistencyOf(review)}
        onOpen={openSession}
      />
      <RangeRowsChart
        {...about}
        title={sayCleanShare(cleanShare)}
        reading={`Clean laps, ${shares.join(". ")}.`}
        fileName={`${comboName} clean laps`}
        rows={shareRows(review, marginPercent)}
        axisTitle="percent of laps; line: very likely range"
        axisOf={(values) => percentTicks(values)}
        say={(percent) => `${Math.round(percent)} %`}
        csvUnit="percent"
      />
      <SpreadPart looked={looked} />
      <LeftOut onSessions={onSessions}>
        {unknown > 0 &&
          `${unknown === 1 ? "1 session has" : `${unknown} sessions have`} too few exact pace laps for a scatter. `}
        Clean laps are counted among timed laps of runs written lap by lap.
      </LeftOut>
    </>
  );
}
