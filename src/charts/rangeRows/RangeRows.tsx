import type { ReactNode } from "react";
import type { Axis } from "../axes/niceAxis.ts";
import styles from "../frame/Marks.module.css";
import { type Room, textWidth } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";

/** One figure with its interval. */
export interface RangeRow {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Both ends in words, where they are rounded otherwise than the value. */
  readonly ends?: readonly [low: string, high: string];
  /** In grey: what it is compared with. */
  readonly soft?: boolean;
}

interface RangeRowsProps {
  readonly rows: readonly RangeRow[];
  readonly axis: Axis;
  readonly hasZero: boolean;
  readonly room: Room;
  readonly walk: Walk;
  readonly children: ReactNode;
}

/** The rows on their scale; where there is little room, each label stands above its row. */
export function RangeRows({ rows, axis, hasZero, room, walk, children }: RangeRowsProps) {
  const { width, em } = room;
  const widest = Math.max(...rows.map(({ label }) => textWidth(label, em * 1.05))) + em * 1.5;
  const isStacked = widest > width * 0.45;
  const left = isStacked ? em : widest;
  const right = width - em * 2;
  const row = em * (isStacked ? 3.4 : 2.4);
  const top = em * 2;
  const bottom = top + rows.length * row + 4;
  const [from, to] = axis.domain;
  const x = (value: number) => Math.round((left + ((value - from) / (to - from)) * (right - left)) * 10) / 10;
  const middle = (index: number) => top + (index + 0.5) * row + (isStacked ? em * 0.7 : 0);
  const labels = ticksThatFit(axis, right - left, em);
  return (
    <svg width={width} height={bottom + em * 1.8} aria-hidden="true">
      {children}
      <path
        d={axis.ticks.map((tick) => `M${x(tick)} ${top}V${bottom}`).join("")}
        className={styles["ruled"]}
      />
      {hasZero && <path d={`M${x(0)} ${top}V${bottom}`} className={styles["zero"]} />}
      {labels.map((tick) => (
        <text
          key={tick}
          x={x(tick)}
          y={bottom + em * 1.2}
          textAnchor="middle"
          fontSize={em}
          className={styles["words"]}
        >
          {sayTick(tick, axis.decimals, hasZero)}
        </text>
      ))}
      {rows.map(({ id, label, value, low, high, soft = false }, index) => {
        const y = middle(index);
        return (
          <g key={id}>
            <text
              x={0}
              y={isStacked ? y - em * 1.3 : y}
              dominantBaseline="central"
              fontSize={em * 1.05}
              className={styles[soft ? "words" : "wordsInk"]}
            >
              {label}
            </text>
            <path
              d={`M${x(low)} ${y}H${x(high)}M${x(low)} ${y - 5}v10M${x(high)} ${y - 5}v10`}
              className={styles[soft ? "whiskerOld" : "whisker"]}
            />
            <path d={`M${x(value)} ${y}h0`} className={styles[pointStyle(value, low, high, hasZero, soft)]} />
          </g>
        );
      })}
      <g data-passing="">
        {walk.point !== undefined && (
          <circle cx={x(walk.point.x)} cy={middle(walk.point.y)} r={9} className={styles["walked"]} />
        )}
      </g>
    </svg>
  );
}

/** Only a clear difference gets the ink of a gain or a loss. */
function pointStyle(value: number, low: number, high: number, hasZero: boolean, soft: boolean) {
  if (soft) return "pointOld";
  if (!hasZero || (low <= 0 && high >= 0)) return "point";
  return value < 0 ? "pointGain" : "pointLoss";
}

function sayTick(tick: number, decimals: number, isSigned: boolean): string {
  const digits = Math.abs(tick).toFixed(decimals);
  if (!isSigned || Number(digits) === 0) return digits;
  return `${tick < 0 ? "−" : "+"}${digits}`;
}

function ticksThatFit({ ticks, decimals }: Axis, width: number, em: number): readonly number[] {
  const needed = Math.max(...ticks.map((tick) => textWidth(sayTick(tick, decimals, true), em))) + em * 0.8;
  const each = Math.max(1, Math.ceil((ticks.length * needed) / Math.max(1, width)));
  return ticks.filter((_, index) => index % each === 0);
}

/** What the scale shows, once above it. */
export function AxisTitleText({ text, em }: { readonly text: string; readonly em: number }) {
  return (
    <text x={0} y={em * 1.1} fontSize={em} className={styles["words"]}>
      {text}
    </text>
  );
}
