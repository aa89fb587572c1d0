import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import { type Room, textWidth } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";
import { type AcrossCombo, type AcrossWords, acrossTable, sayAcrossCombo } from "./acrossTable.ts";
import styles from "./NamedBars.module.css";

export interface AcrossChartProps extends ChartWords {
  /** In the order first driven. */
  readonly combos: readonly AcrossCombo[];
  readonly figure: AcrossWords;
  /** Enter at a combo, or a second press. */
  readonly onOpen?: (comboId: string) => void;
}

interface Known extends AcrossCombo {
  readonly value: number;
}

/** Rows drawn at most: the combos first driven last. */
const mostRows = 24;

/** One figure of every combo as a bar with its name, in the order first driven. */
export function AcrossChart({ combos, figure, onOpen, ...words }: AcrossChartProps) {
  const known = combos.filter((combo): combo is Known => combo.value !== undefined);
  const shown = known.slice(-mostRows);
  const points = shown.map((combo, index) => ({
    x: index,
    y: combo.value,
    text: sayAcrossCombo(combo, figure),
    id: combo.id,
  }));
  return (
    <ChartFrame
      {...words}
      table={acrossTable(combos, figure)}
      series={[{ name: "Combos", points }]}
      note={
        shown.length === known.length
          ? undefined
          : `${shown.length} of ${known.length} combos are drawn; the table has them all.`
      }
      onOpen={onOpen}
    >
      {(room, walk) =>
        shown.length > 0 && <NamedBars combos={shown} figure={figure} room={room} walk={walk} />
      }
    </ChartFrame>
  );
}

interface NamedBarsProps {
  readonly combos: readonly Known[];
  readonly figure: AcrossWords;
  readonly room: Room;
  readonly walk: Walk;
}

/** From a line of nothing to the right, and to the left of it what lies under; where there is little room names stand above. */
function NamedBars({ combos, figure, room: { width, em }, walk }: NamedBarsProps) {
  const values = combos.map(({ value }) => value);
  const widest = Math.max(...combos.map(({ name }) => textWidth(name, em * 1.05))) + em;
  const isStacked = widest > width * 0.4;
  const left = isStacked ? 0 : widest;
  const right =
    width - Math.max(...values.map((value) => textWidth(figure.say(value), em * 1.05))) - em * 1.2;
  const [low, high] = [Math.min(0, ...values), Math.max(0, ...values)];
  const scale = (right - left) / (high - low || 1);
  const x = (value: number) => Math.round((left + (value - low) * scale) * 10) / 10;
  const row = em * (isStacked ? 3.1 : 2.1);
  const top = em * 2.2;
  const middle = (index: number) => top + index * row + (isStacked ? row * 0.68 : row / 2);
  return (
    <svg width={width} height={top + combos.length * row + 4} aria-hidden="true">
      <text x={0} y={em * 1.1} fontSize={em} className={styles["axis"]}>
        {figure.axis}
      </text>
      <path d={`M${x(0)} ${top - 4}V${top + combos.length * row}`} className={styles["zero"]} />
      {combos.map(({ id, name, value }, index) => (
        <g key={id}>
          <text
            x={0}
            y={isStacked ? middle(index) - em * 1.25 : middle(index)}
            dominantBaseline="central"
            fontSize={em * 1.05}
            className={styles["name"]}
          >
            {name}
          </text>
          <rect
            x={Math.min(x(0), x(value))}
            y={middle(index) - em * 0.45}
            width={Math.max(1, Math.abs(x(value) - x(0)))}
            height={em * 0.9}
            className={styles["bar"]}
          />
          <text
            x={Math.max(x(0), x(value)) + em * 0.5}
            y={middle(index)}
            dominantBaseline="central"
            fontSize={em * 1.05}
            className={styles["name"]}
          >
            {figure.say(value)}
          </text>
        </g>
      ))}
      <g data-passing="">
        {combos.map(({ id }, index) => (
          // biome-ignore lint/a11y/noStaticElementInteractions: the same is done by keys on the figure around it
          <rect
            key={id}
            x={1}
            y={top + index * row + 1}
            width={width - 2}
            height={row - 2}
            onPointerMove={(event) => event.pointerType === "mouse" && walk.onPointAt(index)}
            onPointerLeave={(event) => event.pointerType === "mouse" && walk.onPointAt(undefined)}
            onClick={() => walk.onPress(index)}
            cursor="pointer"
            className={styles[walk.point?.x === index ? "walked" : "ground"]}
          />
        ))}
      </g>
    </svg>
  );
}
