import { formatLapTime } from "#domain";
import type { SessionChart } from "#stats";
import { timeTicks } from "../axes/timeTicks.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import type { KeyItem } from "../frame/layKey.ts";
import { leftRoom, Plane } from "../frame/Plane.tsx";
import { mostPoints } from "../frame/thinPoints.ts";
import { plotHeight, type Room } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";
import { IndividualMarks } from "./IndividualMarks.tsx";
import { individualsTable, sayIndividual } from "./individualsTable.ts";

export interface IndividualsChartProps extends ChartWords {
  readonly session: SessionChart;
}

const key: readonly KeyItem[] = [
  { mark: "dot", text: "pace lap" },
  { mark: "line", text: "mean" },
  { mark: "limit", text: "limits" },
  { mark: "walked", text: "worth a second look" },
];

/** The pace laps of one session in order, with mean and limits, and those that are pointed at. */
export function IndividualsChart({ session, ...words }: IndividualsChartProps) {
  const drawn = session.laps.length > mostPoints ? session.laps.slice(-mostPoints) : session.laps;
  const left = session.laps.length - drawn.length;
  return (
    <ChartFrame
      {...words}
      table={individualsTable(session)}
      series={[
        {
          name: "Pace laps",
          points: drawn.map(({ ms }, index) => ({
            x: left + index + 1,
            y: ms,
            text: sayIndividual(session, left + index),
          })),
        },
      ]}
      note={
        left === 0
          ? undefined
          : `The last ${drawn.length} of ${session.laps.length} laps are drawn; the table has them all.`
      }
    >
      {(room, walk) =>
        drawn.length > 0 && <IndividualsPlane session={session} first={left} room={room} walk={walk} />
      }
    </ChartFrame>
  );
}

interface IndividualsPlaneProps {
  readonly session: SessionChart;
  /** Index of the first lap drawn. */
  readonly first: number;
  readonly room: Room;
  readonly walk: Walk;
}

function IndividualsPlane({ session, first, room, walk }: IndividualsPlaneProps) {
  const { width, em } = room;
  const { laps, chart } = session;
  const times = [
    ...laps.slice(first).map(({ ms }) => ms),
    ...(chart === undefined ? [] : [chart.lower, chart.upper]),
  ];
  const yAxis = timeTicks(times);
  const sayY = (ms: number) => formatLapTime(ms, yAxis.decimals);
  const left = leftRoom(yAxis, sayY, em);
  return (
    <Plane
      room={room}
      plotHeight={plotHeight(room, "more")}
      left={left}
      right={16}
      xDomain={[first + 0.4, laps.length + 0.6]}
      xTicks={lapTicks(first + 1, laps.length, Math.floor((width - left) / (em * 3)))}
      yAxis={yAxis}
      sayY={sayY}
      title="lap time, lower is faster; pace laps in order"
      keyItems={key}
      walk={walk}
    >
      <IndividualMarks session={session} first={first} em={em} />
    </Plane>
  );
}

/** Numbers of laps along the bottom, as many as there is room for. */
function lapTicks(from: number, to: number, wanted: number) {
  const step = [1, 2, 5, 10, 20, 50, 100].find((size) => (to - from) / size < wanted) ?? 200;
  const ticks: { value: number; label: string }[] = [];
  for (let lap = Math.ceil(from / step) * step; lap <= to; lap += step)
    ticks.push({ value: lap, label: String(lap) });
  return ticks;
}
