import { calendarTicks } from "../axes/calendarTicks.ts";
import { percentTicks } from "../axes/percentTicks.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import type { KeyItem } from "../frame/layKey.ts";
import styles from "../frame/Marks.module.css";
import { leftRoom, Plane } from "../frame/Plane.tsx";
import { type PlainPoint, thinPoints } from "../frame/thinPoints.ts";
import { usePlane } from "../frame/usePlane.ts";
import { plotHeight, type Room } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";
import { sessionPlaces } from "../progress/sessionPlaces.ts";
import { type AcrossCombo, type AcrossWords, acrossTable, sayAcrossCombo } from "./acrossTable.ts";

export interface AcrossChartProps extends ChartWords {
  /** In the order first driven. */
  readonly combos: readonly AcrossCombo[];
  readonly figure: AcrossWords;
  /** Enter or a click at a combo. */
  readonly onOpen?: (comboId: string) => void;
}

const key: readonly KeyItem[] = [{ mark: "point", text: "a combo, at the day it was first driven" }];

/** One figure of every combo, each at the day it was first driven. */
export function AcrossChart({ combos, figure, onOpen, ...words }: AcrossChartProps) {
  const places = sessionPlaces(combos);
  const known = combos.flatMap((combo) => {
    const x = places.get(combo.id);
    return x === undefined || combo.value === undefined ? [] : [{ x, y: combo.value, combo }];
  });
  const placed = thinPoints(known);
  const points = placed.map(({ x, y, combo }) => ({
    x,
    y,
    text: sayAcrossCombo(combo, figure),
    id: combo.id,
  }));
  return (
    <ChartFrame
      {...words}
      table={acrossTable(combos, figure)}
      series={[{ name: "Combos", points }]}
      note={
        placed.length === known.length
          ? undefined
          : `${placed.length} of ${known.length} combos are drawn; the table has them all.`
      }
      onOpen={onOpen}
    >
      {(room, walk) =>
        placed.length > 0 && <AcrossPlane placed={placed} figure={figure} room={room} walk={walk} />
      }
    </ChartFrame>
  );
}

interface AcrossPlaneProps {
  readonly placed: readonly PlainPoint[];
  readonly figure: AcrossWords;
  readonly room: Room;
  readonly walk: Walk;
}

function AcrossPlane({ placed, figure, room, walk }: AcrossPlaneProps) {
  const { width, em } = room;
  const yAxis = percentTicks(placed.map(({ y }) => y));
  const left = leftRoom(yAxis, figure.say, em);
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
      sayY={figure.say}
      title={figure.axis}
      keyItems={key}
      walk={walk}
    >
      <Dots placed={placed} />
    </Plane>
  );
}

function Dots({ placed }: { readonly placed: readonly PlainPoint[] }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const dots = placed.map(({ x, y }) => `M${plane.x(x)} ${plane.y(y)}h0`).join("");
  return <path d={dots} className={styles["point"]} />;
}
