import { type PlacedScatter, ScatterMarks } from "../across/ScatterMarks.tsx";
import { calendarTicks } from "../axes/calendarTicks.ts";
import { percentTicks } from "../axes/percentTicks.ts";
import { AxisTitle } from "../frame/AxisTitle.tsx";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import { Key } from "../frame/Key.tsx";
import { type KeyItem, layKey } from "../frame/layKey.ts";
import { Plane, tickRow } from "../frame/Plane.tsx";
import { PointerLayer } from "../frame/PointerLayer.tsx";
import { sayThinned } from "../frame/sayThinned.ts";
import { thinPoints } from "../frame/thinPoints.ts";
import { type Room, textWidth } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";
import { PageRule } from "../progress/PageRule.tsx";
import { pageRuleAt, sessionPlaces } from "../progress/sessionPlaces.ts";
import { type ConsistencySession, consistencyTable, sayConsistency } from "./consistencyTable.ts";

export interface ConsistencyChartProps extends ChartWords {
  readonly sessions: readonly ConsistencySession[];
  /** Enter or a click at a session. */
  readonly onOpen?: (sessionId: string) => void;
}

const key: readonly KeyItem[] = [
  { mark: "point", text: "scatter of a session" },
  { mark: "whisker", text: "range it lies in, 9 in 10 sure" },
];

/** How far the laps of each session lie apart, in percent of the usual lap. */
export function ConsistencyChart({ sessions, onOpen, ...words }: ConsistencyChartProps) {
  const places = sessionPlaces(sessions);
  const known = sessions
    .flatMap((session) => {
      const x = places.get(session.id);
      const y = session.scatterPercent;
      return x === undefined || y === undefined ? [] : [{ x, y, session }];
    })
    .sort((a, b) => a.x - b.x);
  const placed = thinPoints(known);
  const points = placed.map(({ x, y, session }) => ({ x, y, text: sayConsistency(session), id: session.id }));
  return (
    <ChartFrame
      {...words}
      table={consistencyTable(sessions)}
      series={[{ name: "Sessions", points }]}
      note={sayThinned(placed.length, known.length)}
      onOpen={onOpen}
    >
      {(room, walk) => placed.length > 0 && <ConsistencyPlane placed={placed} room={room} walk={walk} />}
    </ChartFrame>
  );
}

interface ConsistencyPlaneProps {
  readonly placed: readonly PlacedScatter[];
  readonly room: Room;
  readonly walk: Walk;
}

function ConsistencyPlane({ placed, room, walk }: ConsistencyPlaneProps) {
  const { width, em, narrow } = room;
  const yAxis = percentTicks(placed.flatMap(({ y, session }) => [y, ...(session.intervalPercent ?? [])]));
  const sayY = (percent: number) => `${percent.toFixed(yAxis.decimals)} %`;
  const left = Math.max(...yAxis.ticks.map((tick) => textWidth(sayY(tick), em))) + 12;
  const top = em * 2.2;
  const keyHeight = layKey(key, width - 8, em).height;
  const height = top + em * (narrow ? 13 : 16) + tickRow(em) + keyHeight + 8;
  const { domain, ticks } = calendarTicks(
    placed.map(({ x }) => x),
    Math.floor((width - left) / (em * 5)),
  );
  return (
    <Plane
      width={width}
      height={height}
      margin={{ top, right: 24, bottom: keyHeight + 8, left }}
      em={em}
      xDomain={domain}
      xTicks={ticks}
      yAxis={yAxis}
      sayY={sayY}
    >
      <AxisTitle text="scatter in percent, lower is steadier" em={em} />
      <PageRule x={pageRuleAt(placed)} em={em} />
      <ScatterMarks placed={placed} />
      <Key items={key} x={4} y={height - keyHeight} width={width - 8} em={em} />
      <PointerLayer walk={walk} />
    </Plane>
  );
}
