import { useMemo } from "react";
import { ApexChart } from "#charts/corners/ApexChart.tsx";
import type { CalendarDate } from "#domain";
import { apexTimes, type Corner, shorterWay } from "#physics";
import { apexReading, apexTitle, sayTooFew } from "#words";

interface SlowInFastOutProps {
  readonly corner: Corner;
  readonly asOf: CalendarDate;
  readonly fileName: string;
}

/** Places of the apex that lose more than so much, s, are not drawn: the curve is steep at its ends. */
const MOST_LOST = 1;

/** The trade of a later apex against entry speed: the time through the corner and along its straight over the place of the apex. */
export function SlowInFastOut({ corner, asOf, fileName }: SlowInFastOutProps) {
  const { times, shorter } = useMemo(
    () => ({ times: apexTimes(corner), shorter: shorterWay(corner) }),
    [corner],
  );
  if (!times.known) return <p>{sayTooFew(times.reason)}.</p>;
  const { points, best } = times.value;
  const percentOf = (apexAngle: number) => Math.round((100 * apexAngle) / corner.angle);
  const middle = points.find(({ apexAngle }) => percentOf(apexAngle) === 50);
  const drawn = points
    .map(({ apexAngle, seconds }) => ({ percent: percentOf(apexAngle), lost: seconds - best.seconds }))
    .filter(({ lost }) => lost <= MOST_LOST);
  const bestPercent = percentOf(best.apexAngle);
  return (
    <ApexChart
      title={apexTitle({ best: bestPercent, lost: middle ? (middle.seconds - best.seconds) * 1000 : 0 })}
      reading={apexReading({
        best: bestPercent,
        straight: corner.exitLength,
        shorterWayMs: shorter.known ? -shorter.value.seconds * 1000 : 0,
      })}
      asOf={asOf}
      fileName={fileName}
      points={drawn}
    />
  );
}
