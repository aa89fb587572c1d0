import { usePlotArea, useXAxisScale, useYAxisScale } from "recharts";

/** The plane a layer draws on, in px. */
export interface PlaneArea {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

/** Where values lie on the plane; undefined until the axes are known. */
export function usePlane(): PlaneArea | undefined {
  const area = usePlotArea();
  const x = useXAxisScale();
  const y = useYAxisScale();
  if (area === undefined || x === undefined || y === undefined) return undefined;
  return {
    left: area.x,
    right: area.x + area.width,
    top: area.y,
    bottom: area.y + area.height,
    x: (value) => rounded(x(value) ?? area.x),
    y: (value) => rounded(y(value) ?? area.y),
  };
}

function rounded(px: number): number {
  return Math.round(px * 100) / 100;
}
