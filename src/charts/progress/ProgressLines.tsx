import styles from "../frame/Marks.module.css";
import { type PlaneArea, usePlane } from "../frame/usePlane.ts";
import type { ProgressTarget } from "./progress.ts";
import { ribbonPath } from "./ribbon.ts";

/** A point of the level at its place on the calendar axis. */
export interface PlacedCurve {
  readonly x: number;
  readonly ms: number;
  readonly half?: readonly [number, number] | undefined;
  readonly nineInTen?: readonly [number, number] | undefined;
}

/** A personal best at its place on the calendar axis. */
export interface PlacedStep {
  readonly x: number;
  readonly ms: number;
  readonly decimals?: number | undefined;
}

/**
 * The two bands of the forecast, drawn under everything else. They begin at the last session as wide as they are at the
 * first one to come: were it driven earlier, it would be expected in the same band.
 */
export function CurveBands({ curve }: { readonly curve: readonly PlacedCurve[] }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  return (
    <g>
      <path d={bandPath(plane, curve, (point) => point.nineInTen)} className={styles["bandPale"]} />
      <path d={bandPath(plane, curve, (point) => point.half)} className={styles["band"]} />
    </g>
  );
}

function bandPath(
  plane: PlaneArea,
  curve: readonly PlacedCurve[],
  bandOf: (point: PlacedCurve) => readonly [number, number] | undefined,
): string {
  const edges = curve.flatMap((point, at) => {
    const next = curve[at + 1];
    const band = bandOf(point) ?? (next === undefined ? undefined : bandOf(next));
    return band === undefined ? [] : [{ x: plane.x(point.x), low: plane.y(band[0]), high: plane.y(band[1]) }];
  });
  return ribbonPath(edges);
}

interface ProgressLinesProps {
  readonly steps: readonly PlacedStep[];
  /** How far the last personal best is drawn. */
  readonly until: number;
  readonly targets: readonly ProgressTarget[];
  readonly curve: readonly PlacedCurve[];
}

/** Targets in long dashes, the level in short ones, personal bests as steps. */
export function ProgressLines({ steps, until, targets, curve }: ProgressLinesProps) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const stairs = steps.map(({ x, ms }, at) =>
    at === 0 ? `M${plane.x(x)} ${plane.y(ms)}` : `H${plane.x(x)}V${plane.y(ms)}`,
  );
  const along = targets.map(({ ms }) => `M${plane.left} ${plane.y(ms)}H${plane.right}`);
  const bend = curve.map(({ x, ms }) => `${plane.x(x)} ${plane.y(ms)}`);
  return (
    <g>
      <path d={along.join("")} className={styles["target"]} />
      <path d={bend.length < 2 ? "" : `M${bend.join("L")}`} className={styles["forecast"]} />
      <path
        d={stairs.length === 0 ? "" : `${stairs.join("")}H${plane.x(until)}`}
        className={styles["best"]}
      />
    </g>
  );
}
