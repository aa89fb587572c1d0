import type { ReactNode } from "react";
import { CartesianGrid, ComposedChart, Scatter, XAxis, YAxis } from "recharts";
import type { Axis } from "../axes/niceAxis.ts";

/** A tick along the bottom. */
export interface PlaneTick {
  readonly value: number;
  readonly label: string;
}

/** Room around the plot, px. */
export interface Margin {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

interface PlaneProps {
  readonly width: number;
  readonly height: number;
  readonly margin: Margin;
  readonly em: number;
  readonly xDomain: readonly [number, number];
  readonly xTicks: readonly PlaneTick[];
  readonly yAxis: Axis;
  readonly sayY: (value: number) => string;
  /** Layers that find their places by the axis hooks. */
  readonly children: ReactNode;
}

/** Height of the row of tick labels under the plot, px. */
export const tickRow = (em: number) => em * 2.2;

/**
 * Axes and few rules for layers of our own. The axis hooks answer only where the chart holds a real series, hence
 * the two unseen points in opposite corners.
 */
export function Plane(props: PlaneProps) {
  const { width, height, margin, em, xDomain, xTicks, yAxis, sayY, children } = props;
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
      margin={{ ...margin, left: 0 }}
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
        height={tickRow(em)}
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
        width={margin.left}
        tick={words}
        tickLine={false}
        axisLine={false}
      />
      <Scatter dataKey="y" data={corners} isAnimationActive={false} shape={() => <g />} />
      {children}
    </ComposedChart>
  );
}
