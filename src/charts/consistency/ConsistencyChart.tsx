import { type PlacedScatter, ScatterMarks } from "../across/ScatterMarks.tsx";
import { calendarTicks } from "../axes/calendarTicks.ts";
import { percentTicks } from "../axes/percentTicks.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import type { KeyItem } from "../frame/layKey.ts";
import { leftRoom, Plane } from "../frame/Plane.tsx";
import { sayThinned } from "../frame/sayThinned.ts";
import { thinPoints } from "../frame/thinPoints.ts";
import { plotHeight, type Room } from "../frame/useRoom.ts";
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
  { mark: "whisker", text: "range it very likely lies in" },
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
  const { width, em } = room;
  const yAxis = percentTicks(placed.flatMap(({ y, session }) => [y, ...(session.intervalPercent ?? [])]));
  const sayY = (percent: number) => `${percent.toFixed(yAxis.decimals)} %`;
  const left = leftRoom(yAxis, sayY, em);
  const { domain, ticks } = calendarTicks(
    placed.map(({ x }) => x),
    Math.floor((width - left) / (em * 5)),
  );
  return (
    <Plane
      room={room}
      plotHeight={plotHeight(room, "more")}
      left={left}
      right={24}
      xDomain={domain}
      xTicks={ticks}
      yAxis={yAxis}
      sayY={sayY}
      title="scatter in percent, lower is steadier"
      keyItems={key}
      walk={walk}
    >
      <PageRule x={pageRuleAt(placed)} em={em} />
      <ScatterMarks placed={placed} />
    </Plane>
  );
}
