import { type CalendarDate, formatLapTime } from "#domain";
import { calendarTicks } from "../axes/calendarTicks.ts";
import { timeTicks } from "../axes/timeTicks.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import { EndLabels, endRoom } from "../frame/EndLabels.tsx";
import { leftRoom, Plane } from "../frame/Plane.tsx";
import { sayThinned } from "../frame/sayThinned.ts";
import { thinPoints } from "../frame/thinPoints.ts";
import type { Room } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";
import { PageRule } from "./PageRule.tsx";
import { CurveBands, ProgressLines } from "./ProgressLines.tsx";
import type { ProgressData } from "./progress.ts";
import { progressEnds, progressKey } from "./progressEnds.ts";
import { progressTable } from "./progressTable.ts";
import { progressWalk } from "./progressWalk.ts";
import { isDense } from "./ribbon.ts";
import { SessionMarks } from "./SessionMarks.tsx";
import { dayOf, pageRuleAt, sessionPlaces } from "./sessionPlaces.ts";

export interface ProgressChartProps extends ProgressData, ChartWords {
  /** Enter or a click at a session. */
  readonly onOpen?: (sessionId: string) => void;
}

/** Lap times of a combo over the weeks (without a session only words and table): sessions, personal bests, targets, and where the level leads. */
export function ProgressChart(props: ProgressChartProps) {
  const { sessions, pbSteps, targets, curve, onOpen, ...words } = props;
  const drawn = placeAll(props);
  return (
    <ChartFrame
      {...words}
      table={progressTable({ sessions, curve })}
      series={progressWalk({ sessions: drawn.sessions, pbSteps, targets, curve }, drawn.placeOf)}
      note={sayThinned(drawn.sessions.length, sessions.length)}
      onOpen={onOpen}
    >
      {(room, walk) =>
        drawn.placed.length > 0 && <ProgressPlane drawn={drawn} targets={targets} room={room} walk={walk} />
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
  readonly room: Room;
  readonly walk: Walk;
}

function ProgressPlane({ drawn, targets, room, walk }: ProgressPlaneProps) {
  const { width, em, narrow } = room;
  const { placed, steps, curve } = drawn;
  const times = [
    ...placed.flatMap(({ session: { median, q1, q3, best, bestOfTen } }) => [
      median,
      q1,
      q3,
      best,
      bestOfTen,
    ]),
    ...steps.map(({ ms }) => ms),
    ...targets.map(({ ms }) => ms),
    ...curve.flatMap(({ ms, nineInTen = [] }) => [ms, ...nineInTen]),
  ].filter((ms) => ms !== undefined);
  const yAxis = timeTicks(withAir(times));
  const days = [...placed, ...steps, ...curve].map(({ x }) => x);
  const until = Math.max(...[...placed, ...steps].map(({ x }) => x));
  const sayY = (ms: number) => formatLapTime(ms, yAxis.decimals);
  const left = leftRoom(yAxis, sayY, em);
  const ends = progressEnds({ steps, until, targets, curve, right: Math.max(...days) });
  const right = narrow ? 12 : endRoom(ends, em);
  const { domain, ticks } = calendarTicks(days, Math.floor((width - left - right) / (em * 5)));
  const pxADay = (width - left - right) / (domain[1] - domain[0]);
  const hasBestOfTen =
    !isDense(placed.map(({ x }) => x * pxADay)) &&
    placed.some(({ session }) => session.bestOfTen !== undefined);
  const keyItems = progressKey({ steps, until, targets, curve, right, hasBestOfTen }, narrow);
  return (
    <Plane
      room={room}
      plotHeight={em * (narrow ? 15 : 20)}
      left={left}
      right={right}
      xDomain={domain}
      xTicks={ticks}
      yAxis={yAxis}
      sayY={sayY}
      title="lap time, lower is faster"
      keyItems={keyItems}
      walk={walk}
    >
      <CurveBands curve={curve} />
      <PageRule x={pageRuleAt(placed)} em={em} />
      <SessionMarks placed={placed} />
      <ProgressLines steps={steps} until={until} targets={targets} curve={curve} />
      {!narrow && <EndLabels ends={ends} em={em} />}
    </Plane>
  );
}

/** A little more than the values span, so that none of them, a PB least of all, is drawn on the axis itself. */
function withAir(times: readonly number[]): readonly number[] {
  if (times.length === 0) return times;
  const [low, high] = [Math.min(...times), Math.max(...times)];
  const air = Math.max(1, (high - low) * 0.02);
  return [low - air, high + air];
}
