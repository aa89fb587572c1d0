import { formatDelta } from "#domain";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import { type Room, textWidth } from "../frame/useRoom.ts";
import type { Walk, WalkPoint } from "../frame/useWalk.ts";
import styles from "./Bridge.module.css";
import { BridgeRow } from "./BridgeRow.tsx";
import { type AccountLine, type BridgeStep, bridgeSteps, bridgeTable } from "./bridgeTable.ts";

export interface BridgeChartProps extends ChartWords {
  readonly lines: readonly AccountLine[];
  /** The sum of the lines, under a double rule. */
  readonly balance: AccountLine;
  readonly onOpen?: (lineId: string) => void;
}

/** Where the time went: each line of the time account begins where the one before it ended. */
export function BridgeChart({ lines, balance, onOpen, ...words }: BridgeChartProps) {
  const steps = [...bridgeSteps(lines), { ...balance, from: 0, to: balance.ms }];
  const points = steps.map(({ id, label, ms }, index): WalkPoint => {
    const text = `${label}: ${formatDelta(ms)} seconds a lap`;
    return { x: index, y: ms, text, id };
  });
  return (
    <ChartFrame
      {...words}
      table={bridgeTable(lines, balance)}
      series={[{ name: "Time account", points }]}
      onOpen={onOpen}
      above="none"
    >
      {(room, walk) => <BridgeDrawing steps={steps} room={room} walk={walk} />}
    </ChartFrame>
  );
}

interface BridgeDrawingProps {
  /** The balance last. */
  readonly steps: readonly BridgeStep[];
  readonly room: Room;
  readonly walk: Walk;
}

function BridgeDrawing({ steps, room, walk }: BridgeDrawingProps) {
  const { width, em } = room;
  const row = em * 2.6;
  const ends = steps.flatMap(({ from, to }) => [from, to]);
  const low = Math.min(0, ...ends);
  const high = Math.max(1, ...ends);
  const labels = Math.max(...steps.map(({ label }) => textWidth(label, em * 1.05))) + em;
  const values = textWidth("+0.000", em * 1.1) + em;
  const scale = Math.max(1, width - labels - values) / (high - low);
  const x = (ms: number) => Math.round((labels + (ms - low) * scale) * 100) / 100;
  const largest = steps.slice(0, -1).reduce((most, { ms }) => Math.max(most, Math.abs(ms)), 0);
  const last = steps.length - 1;
  const doubleRule = last * row + 2;
  const yOf = (index: number) => index * row + (index === last ? 8 : 0);
  return (
    <svg width={width} height={steps.length * row + 10} aria-hidden="true">
      {steps.slice(0, -1).map((step, index) => (
        <path
          key={step.id}
          d={`M${x(step.to)} ${yOf(index) + row / 2}V${yOf(index + 1) + row / 2}`}
          className={styles["step"]}
        />
      ))}
      {steps.map((step, index) => (
        <BridgeRow
          key={step.id}
          step={step}
          kind={index === last ? "balance" : Math.abs(step.ms) === largest ? "largest" : "plain"}
          y={yOf(index)}
          height={row}
          x={x}
          em={em}
        />
      ))}
      <path d={`M0 ${doubleRule}H${width}M0 ${doubleRule + 3}H${width}`} className={styles["rule"]} />
      <g data-passing="">
        {walk.point !== undefined && (
          <rect
            x={1}
            y={yOf(walk.point.x) + 1}
            width={width - 2}
            height={row - 2}
            className={styles["walked"]}
          />
        )}
      </g>
    </svg>
  );
}
