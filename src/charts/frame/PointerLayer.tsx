import type { MouseEvent } from "react";
import styles from "./Marks.module.css";
import { usePlane } from "./usePlane.ts";
import { nearestAt, type Walk } from "./useWalk.ts";

interface PointerLayerProps {
  readonly walk: Walk;
  /** The points stand over each other: the pointer's height tells which is meant. */
  readonly upright?: boolean;
}

/** Finds the point nearest to the pointer, and rings the point the walk is at. A first press reads it, a second opens it. */
export function PointerLayer({ walk, upright = false }: PointerLayerProps) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const pointAt = (event: MouseEvent<SVGRectElement>) => {
    const ground = event.currentTarget.getBoundingClientRect();
    const at = upright ? plane.top + event.clientY - ground.top : plane.left + event.clientX - ground.left;
    return nearestAt(walk.points, at, (point) => (upright ? plane.y(point.y) : plane.x(point.x)));
  };
  const { point } = walk;
  return (
    <g data-passing="">
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the same is done by keys on the figure around it */}
      <rect
        x={plane.left}
        y={plane.top}
        width={Math.max(0, plane.right - plane.left)}
        height={Math.max(0, plane.bottom - plane.top)}
        onPointerMove={(event) => event.pointerType === "mouse" && walk.onPointAt(pointAt(event))}
        onPointerLeave={(event) => event.pointerType === "mouse" && walk.onPointAt(undefined)}
        onClick={(event) => walk.points.length > 0 && walk.onPress(pointAt(event))}
        className={styles["ground"]}
        cursor={walk.open === undefined ? undefined : "pointer"}
      />
      {point !== undefined && (
        <circle
          cx={plane.x(point.x)}
          cy={plane.y(point.y)}
          r={9}
          pointerEvents="none"
          className={styles["walked"]}
        />
      )}
    </g>
  );
}
