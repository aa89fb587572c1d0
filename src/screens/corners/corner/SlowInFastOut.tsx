import { useMemo } from "react";
import { ApexChart } from "#charts/corners/ApexChart.tsx";
import type { CalendarDate, Figure } from "#domain";
import { type Corner, shorterWay } from "#physics";
import { apexReading, apexTitle, noTradeSays, sayTooFew } from "#words";
import type { ApexPlaces } from "./apexPlaces.ts";

interface SlowInFastOutProps {
  readonly corner: Corner;
  readonly apexes: Figure<ApexPlaces>;
  /** Numbers of the corners it is joined to. */
  readonly joined: { readonly before: number | undefined; readonly after: number | undefined };
  readonly asOf: CalendarDate;
  readonly fileName: string;
}

/** Places of the apex that lose more than so much, s, are not drawn: the curve is steep at its ends. */
const MOST_LOST = 1;

/** The trade of a later apex against entry speed: the time through the corner and along its straight over the place of the apex. */
export function SlowInFastOut({ corner, apexes, joined, asOf, fileName }: SlowInFastOutProps) {
  const shorter = useMemo(() => shorterWay(corner), [corner]);
  if (!apexes.known) {
    const { reason } = apexes;
    const isTooShort = "because" in reason && reason.because === "straights too short";
    const chain = isTooShort ? noTradeSays(joined) : undefined;
    return <p>{chain ?? `${sayTooFew(reason)}.`}</p>;
  }
  const { points, best, lost } = apexes.value;
  return (
    <ApexChart
      title={apexTitle({ best, lost })}
      reading={apexReading({
        best,
        straight: corner.exitLength,
        shorterWayMs: shorter.known ? -shorter.value.seconds * 1000 : 0,
      })}
      asOf={asOf}
      fileName={fileName}
      points={points.filter((point) => point.lost <= MOST_LOST)}
    />
  );
}
