import { useState } from "react";
import { type CalendarDate, formatLapTime } from "#domain";
import { Button } from "#ui/Button.tsx";
import { calendarTicks } from "../axes/calendarTicks.ts";
import { timeTicks } from "../axes/timeTicks.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import { EndLabels, endRoom } from "../frame/EndLabels.tsx";
import { leftRoom, Plane } from "../frame/Plane.tsx";
import { sayThinned } from "../frame/sayThinned.ts";
import { thinPoints } from "../frame/thinPoints.ts";
import { plotHeight, type Room } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";
import { middleOnes } from "./middleOnes.ts";
import { PageRule } from "./PageRule.tsx";
import { CurveBands, ProgressLines } from "./ProgressLines.tsx";
import type { ProgressData } from "./progress.ts";
import { type PlacedUsual, progressEnds, progressKey } from "./progressEnds.ts";
import { progressTable } from "./progressTable.ts";
import { progressWalk } from "./progressWalk.ts";
import { isDense } from "./ribbon.ts";
import { SessionMarks } from "./SessionMarks.tsx";
import { dayOf, pageRuleAt, sessionPlaces } from "./sessionPlaces.ts";

export interface ProgressChartProps extends ProgressData, ChartWords {
  /** Whether level, forecast and targets are drawn beside what was driven, and the way to have them. */
  readonly isAhead: boolean;
  readonly onAhead: (isAhead: boolean) => void;
  /** Enter or a second press at a session. */
  readonly onOpen?: (sessionId: string) => void;
}

/**
 * Lap times of a combo over the weeks (without a session only words and table): at first sight usual laps, half of the
 * laps about them, and the PB; what is to come and the best laps on request.
 */
export function ProgressChart(props: ProgressChartProps) {
  const { sessions, pbSteps, isAhead, onAhead, onOpen, ...words } = props;
  const [hasBests, setBests] = useState(false);
  const curve = isAhead ? props.curve : [];
  const targets = isAhead ? props.targets : [];
  const drawn = placeAll({ sessions, pbSteps, targets, curve });
  const hasMore = (props.curve ?? []).length > 0 || props.targets.length > 0;
  return (
    <ChartFrame
      {...words}
      table={progressTable({ sessions, curve })}
      series={progressWalk({ sessions: drawn.sessions, pbSteps, targets, curve }, drawn.placeOf)}
      note={sayThinned(drawn.sessions.length, sessions.length)}
      onOpen={onOpen}
      beside={
        drawn.placed.length > 0 && (
          <>
            <Button aria-pressed={hasBests} onClick={() => setBests(!hasBests)}>
              Best laps
            </Button>
            {hasMore && (
              <Button aria-pressed={isAhead} onClick={() => onAhead(!isAhead)}>
                What is to come
              </Button>
            )}
          </>
        )
      }
    >
      {(room, walk) =>
        drawn.placed.length > 0 && (
          <ProgressPlane drawn={drawn} targets={targets} hasBests={hasBests} room={room} walk={walk} />
        )
      }
    </ChartFrame>
  );
}

/** Everything at its place on the calendar axis, thinned to what a chart may draw. */
function placeAll({ sessions, pbSteps, curve = [] }: ProgressData) {
  const places = sessionPlaces(sessions);
  const placeOf = (id: string | undefined, date: CalendarDate) =>
    (id === undefined ? undefined : places.get(id)) ?? dayOf(date);
  const placed = thinPoints(
    sessions
      .map((session) => ({
        x: placeOf(session.id, session.date),
        y: session.median ?? session.best ?? 0,
        session,
      }))
      .sort((a, b) => a.x - b.x),
  );
  return {
    placed,
    placeOf,
    sessions: placed.map(({ session }) => session),
    steps: pbSteps.map(({ date, ms, decimals, sessionId }) => ({
      x: placeOf(sessionId, date),
      ms,
      decimals,
    })),
    curve: curve.map((point) => ({ ...point, x: placeOf(point.sessionId, point.date) })),
  };
}

interface ProgressPlaneProps {
  readonly drawn: ReturnType<typeof placeAll>;
  readonly targets: ProgressData["targets"];
  readonly hasBests: boolean;
  readonly room: Room;
  readonly walk: Walk;
}

/** Sessions that a narrow chart shows one by one; of more it shows the middle ones, with a band. */
const mostNarrow = 12;

function ProgressPlane({ drawn, targets, hasBests, room, walk }: ProgressPlaneProps) {
  const { width, em, narrow } = room;
  const { placed, steps, curve } = drawn;
  const shown = narrow ? middleOnes(placed, mostNarrow) : placed;
  const times = [
    ...placed.flatMap(({ session: { median, q1, q3, best, bestOfTen } }) =>
      hasBests ? [median, q1, q3, best, bestOfTen] : [median, q1, q3],
    ),
    ...steps.map(({ ms }) => ms),
    ...targets.map(({ ms }) => ms),
    ...curve.flatMap(({ ms, nineInTen = [] }) => [ms, ...nineInTen]),
  ].filter((ms) => ms !== undefined);
  const yAxis = timeTicks(withAir(times));
  const days = [...placed, ...steps, ...curve].map(({ x }) => x);
  const until = Math.max(...[...placed, ...steps].map(({ x }) => x));
  const sayY = (ms: number) => formatLapTime(ms, yAxis.decimals);
  const left = leftRoom(yAxis, sayY, em);
  const ends = progressEnds(
    { steps, until, usual: lastUsual(placed), targets, curve, right: Math.max(...days) },
    narrow,
  );
  const right = endRoom(ends, em);
  const { domain, ticks } = calendarTicks(days, Math.floor((width - left - right) / (em * 5)));
  const pxADay = (width - left - right) / (domain[1] - domain[0]);
  const isBand = shown.length < placed.length || isDense(shown.map(({ x }) => x * pxADay));
  const hasBestOfTen = hasBests && !isBand && placed.some(({ session }) => session.bestOfTen !== undefined);
  return (
    <Plane
      room={room}
      plotHeight={plotHeight(room, "most")}
      left={left}
      right={right}
      xDomain={domain}
      xTicks={ticks}
      yAxis={yAxis}
      sayY={sayY}
      title="lap time, lower is faster"
      keyItems={progressKey({ curve, isBand, hasBest: hasBests, hasBestOfTen, narrow })}
      walk={walk}
    >
      <CurveBands curve={curve} />
      <SessionMarks placed={shown} isBand={isBand} hasBests={hasBests} />
      <ProgressLines steps={steps} until={until} targets={targets} curve={curve} />
      <PageRule x={pageRuleAt(placed)} em={em} />
      <EndLabels ends={ends} em={em} />
    </Plane>
  );
}

/** The last session with a usual lap of the present page. */
function lastUsual(placed: ReturnType<typeof placeAll>["placed"]): PlacedUsual | undefined {
  const last = placed.findLast(({ session }) => session.isPresentPage && session.median !== undefined);
  const { median, medianDecimals: decimals } = last?.session ?? {};
  return last === undefined || median === undefined ? undefined : { x: last.x, ms: median, decimals };
}

/** A little more than the values span, so that none of them, a PB least of all, is drawn on the axis itself. */
function withAir(times: readonly number[]): readonly number[] {
  if (times.length === 0) return times;
  const [low, high] = [Math.min(...times), Math.max(...times)];
  const air = Math.max(1, (high - low) * 0.02);
  return [low - air, high + air];
}
