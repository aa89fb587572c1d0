import { formatDelta, wayOf } from "#domain";
import styles from "./Bridge.module.css";
import type { BridgeStep } from "./bridgeTable.ts";

interface BridgeRowProps {
  readonly step: BridgeStep;
  readonly kind: "plain" | "largest" | "balance";
  /** Top and height of the row, px. */
  readonly y: number;
  readonly height: number;
  /** Where a time lies along the bridge. */
  readonly x: (ms: number) => number;
  readonly em: number;
}

const inks = { faster: "gain", slower: "loss", "the same": "same" } as const;

/** A line of the time account: its name, its bar, what it costs. */
export function BridgeRow({ step, kind, y, height, x, em }: BridgeRowProps) {
  const left = Math.min(x(step.from), x(step.to));
  const right = Math.max(x(step.from), x(step.to));
  const middle = y + height / 2;
  const ink = inks[wayOf(step.ms)];
  const bar = kind === "balance" ? "balance" : kind === "largest" ? `${ink}Largest` : ink;
  return (
    <g>
      <text
        x={0}
        y={middle}
        dominantBaseline="central"
        fontSize={em * 1.05}
        className={styles[kind === "balance" ? "heavy" : "label"]}
      >
        {step.label}
      </text>
      <rect
        x={left}
        y={middle - em * 0.85}
        width={Math.max(1, right - left)}
        height={em * 1.7}
        className={styles[bar]}
      />
      <text
        x={right + em * 0.6}
        y={middle}
        dominantBaseline="central"
        fontSize={em * 1.05}
        className={styles[`${ink}Words`]}
      >
        {formatDelta(step.ms)}
      </text>
    </g>
  );
}
