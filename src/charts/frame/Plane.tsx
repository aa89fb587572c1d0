import type { ReactNode } from "react";
import { CartesianGrid, ComposedChart, Scatter, XAxis, YAxis } from "recharts";
import type { Axis } from "../axes/niceAxis.ts";
import { AxisTitle } from "./AxisTitle.tsx";
import { Key } from "./Key.tsx";
import { type KeyItem, layKey } from "./layKey.ts";
import { PointerLayer } from "./PointerLayer.tsx";
import { type Room, textWidth } from "./useRoom.ts";
import type { Walk } from "./useWalk.ts";

/** A tick along the bottom. */
export interface PlaneTick {
  readonly value: number;
  readonly label: string;
}

interface PlaneProps {
  readonly room: Room;
  /** Height of the plot itself, without its words and key, px. */
  readonly plotHeight: number;
  /** Room beside the plot, px. */
  readonly left: number;
  readonly right: number;
  readonly xDomain: readonly [number, number];
  readonly xTicks: readonly PlaneTick[];
  readonly yAxis: Axis;
  readonly sayY: (value: number) => string;
  /** What the upright axis shows, and which way is good. */
  readonly title: string;
  readonly keyItems: readonly KeyItem[];
  readonly walk: Walk;
  /** The points stand over each other: the pointer's height tells which is meant. */
  readonly upright?: boolean;
  /** Layers that find their places by the axis hooks. */
  readonly children: ReactNode;
}

/** Room the tick labels of the upright axis need, px. */
export function leftRoom({ ticks }: Axis, sayY: (value: number) => string, em: number): number {
  return Math.max(...ticks.map((tick) => textWidth(sayY(tick), em))) + 12;
}

/**
 * A title over axes and few rules for layers of our own, a key under them, and the walk over all. The axis hooks answer
 * only where the chart holds a real series, hence the two unseen points in opposite corners.
 */
export function Plane(props: PlaneProps) {
  const { room, plotHeight, left, right, xDomain, xTicks, yAxis, sayY, keyItems } = props;
  const { width, em } = room;
  const above = em * 2.2;
  const tickRow = em * 2.2;
  const keyWidth = width - 8;
  const keyHeight = layKey(keyItems, keyWidth, em).height;
  const height = above + plotHeight + tickRow + keyHeight + 8;
  const [bottom, top] = yAxis.domain;
  const corners = [
    { x: xDomain[0], y: bottom },
    { x: xDomain[1], y: top },
  ];
  const labels = new Map(xTicks.map((tick) => [tick.value, tick.label]));
  const words = { fill: "var(--soft)", fontSize: em };
  return (
    <ComposedChart
      width={width}
      height={height}
      margin={{ top: above, right, bottom: keyHeight + 8, left: 0 }}
      data={corners}
      accessibilityLayer={false}
    >
      <CartesianGrid vertical={false} stroke="var(--rule)" />
      <XAxis
        type="number"
        dataKey="x"
        domain={[...xDomain]}
        ticks={xTicks.map((tick) => tick.value)}
        tickFormatter={(value: number) => labels.get(value) ?? ""}
        interval={0}
        height={tickRow}
        tick={words}
        tickMargin={em * 0.5}
        tickLine={false}
        axisLine={{ stroke: "var(--field)" }}
      />
      <YAxis
        type="number"
        dataKey="y"
        domain={[bottom, top]}
        ticks={[...yAxis.ticks]}
        tickFormatter={sayY}
        interval={0}
        width={left}
        tick={words}
        tickLine={false}
        axisLine={false}
      />
      <Scatter dataKey="y" data={corners} isAnimationActive={false} shape={() => <g />} />
      <AxisTitle text={props.title} em={em} />
      {props.children}
      <Key items={keyItems} x={4} y={height - keyHeight} width={keyWidth} em={em} />
      <PointerLayer walk={props.walk} upright={props.upright ?? false} />
    </ComposedChart>
  );
}
