import { percentTicks } from "../axes/percentTicks.ts";
import { secondTicks } from "../axes/secondTicks.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import type { KeyItem } from "../frame/layKey.ts";
import marks from "../frame/Marks.module.css";
import { leftRoom, Plane } from "../frame/Plane.tsx";
import { usePlane } from "../frame/usePlane.ts";
import { plotHeight, type Room } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";
import { type ApexPoint, apexTable, sayApexPoint } from "./apexTable.ts";

interface ApexChartProps extends ChartWords {
  /** Places of the apex in their order along the corner, the best among them. */
  readonly points: readonly ApexPoint[];
}

const key: readonly KeyItem[] = [
  { mark: "line", text: "time lost" },
  { mark: "walked", text: "best place" },
];

/** Slow in, fast out: what is lost through a corner, its straight included, over the place of the apex. */
export function ApexChart({ points, ...words }: ApexChartProps) {
  return (
    <ChartFrame
      {...words}
      table={apexTable(points)}
      series={[
        {
          name: "Places of the apex",
          points: points.map((point) => ({ x: point.percent, y: point.lost, text: sayApexPoint(point) })),
        },
      ]}
    >
      {(room, walk) => points.length > 1 && <ApexPlane points={points} room={room} walk={walk} />}
    </ChartFrame>
  );
}

interface ApexPlaneProps {
  readonly points: readonly ApexPoint[];
  readonly room: Room;
  readonly walk: Walk;
}

function ApexPlane({ points, room, walk }: ApexPlaneProps) {
  const { width, em } = room;
  const yAxis = secondTicks(
    points.map(({ lost }) => lost),
    6,
  );
  const sayY = (seconds: number) => seconds.toFixed(yAxis.decimals);
  const percents = points.map(({ percent }) => percent);
  const [from, to] = [Math.min(...percents), Math.max(...percents)];
  const left = leftRoom(yAxis, sayY, em);
  return (
    <Plane
      room={room}
      plotHeight={plotHeight(room, "more")}
      left={left}
      right={24}
      xDomain={[from, to]}
      xTicks={percentTicks(percents)
        .ticks.filter((tick) => tick >= from && tick <= to)
        .map((tick) => ({ value: tick, label: width < em * 30 ? `${tick}` : `${tick} %` }))}
      yAxis={yAxis}
      sayY={sayY}
      title={
        room.narrow
          ? "seconds lost; early to late apex, %"
          : "seconds lost, lower is faster; apex from early to late, percent of the turn"
      }
      keyItems={key}
      walk={walk}
    >
      <ApexLine points={points} />
    </Plane>
  );
}

function ApexLine({ points }: { readonly points: readonly ApexPoint[] }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const best = points.reduce((one, point) => (point.lost < one.lost ? point : one));
  const place = ({ percent, lost }: ApexPoint) => `${plane.x(percent)} ${plane.y(lost)}`;
  return (
    <g>
      <path d={`M${points.map(place).join("L")}`} className={marks["line"]} />
      <path d={`M${plane.x(best.percent)} ${plane.bottom}V${plane.top}`} className={marks["limit"]} />
      <circle cx={plane.x(best.percent)} cy={plane.y(best.lost)} r={7} className={marks["walked"]} />
    </g>
  );
}
