import { type CalendarDate, formatLapTime, sayDay } from "#domain";
import { sayLapTime, sayLevel, sayUsual } from "#words";
import type { WalkPoint, WalkSeries } from "../frame/useWalk.ts";
import type { CurvePoint, ProgressData, ProgressSession } from "./progress.ts";

/**
 * The points of the progress chart in words.
 * @param placeOf where a session stands on the calendar axis
 */
export function progressWalk(
  data: ProgressData,
  placeOf: (id: string | undefined, date: CalendarDate) => number,
): readonly WalkSeries[] {
  const atSession = (session: ProgressSession, y: number | undefined): WalkPoint[] =>
    y === undefined
      ? []
      : [{ x: placeOf(session.id, session.date), y, text: saySession(session), id: session.id }];
  return [
    { name: "Sessions", points: data.sessions.flatMap((one) => atSession(one, one.median ?? one.best)) },
    {
      name: "Personal bests",
      points: data.pbSteps.map(({ date, ms, decimals = 3, sessionId, since }) => ({
        x: placeOf(sessionId, date),
        y: ms,
        text: `${sayDay(date)}: personal best ${sayLapTime(ms, decimals)}${since === undefined ? "" : `, driven ${sayDay(since)}`}`,
        ...(sessionId === undefined ? {} : { id: sessionId }),
      })),
    },
    {
      name: "Level",
      points: (data.curve ?? []).map((point) => ({
        x: placeOf(point.sessionId, point.date),
        y: point.ms,
        text: sayCurve(point),
        ...(point.sessionId === undefined ? {} : { id: point.sessionId }),
      })),
    },
  ];
}

function saySession(session: ProgressSession): string {
  const { date, median, medianDecimals, q1, q3, best, bestDecimals, bestOfTen, laps, isPresentPage } =
    session;
  const parts = [
    median !== undefined && `usual ${sayUsual(median, medianDecimals)}`,
    q1 !== undefined &&
      q3 !== undefined &&
      `half of the laps ${sayUsual(q1, medianDecimals)} to ${sayUsual(q3, medianDecimals)}`,
    best !== undefined && `best pace lap ${formatLapTime(best, bestDecimals)}`,
    bestOfTen !== undefined && `best of ten ${sayUsual(bestOfTen, medianDecimals)}`,
    laps === 1 ? "1 pace lap" : `${laps} pace laps`,
    !isPresentPage && "older page",
  ];
  return `${sayDay(date)}: ${parts.filter((part) => part !== false).join(", ")}`;
}

function sayCurve({ date, ms, half, nineInTen }: CurvePoint): string {
  const within = (words: string, band: readonly [number, number] | undefined) =>
    band === undefined ? "" : `, ${words} ${sayLevel(band[0])} to ${sayLevel(band[1])}`;
  return `${sayDay(date)}: level ${sayLevel(ms)}${within("half of sessions", half)}${within("9 in 10", nineInTen)}`;
}
