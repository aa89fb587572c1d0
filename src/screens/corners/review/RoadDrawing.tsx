import styles from "./CrossSections.module.css";
import type { CrossSection } from "./crossSection.ts";

/** Metres: how high the picture is, where the road lies in it, and how thick it is drawn. */
const [height, ground, thickness] = [2.05, 1.6, 0.3];
const wheel = { width: 0.3, height: 0.5 };

interface RoadDrawingProps {
  readonly section: CrossSection;
  /** Metres; undefined where nobody looked: then the car stands in the middle, in dashes. */
  readonly gap: number | undefined;
}

/**
 * The road seen along itself, a car's width of land on both sides, and the car on it, all to one scale. The same is said in
 * words beside it.
 */
export function RoadDrawing({ section, gap }: RoadDrawingProps) {
  const { width, carWidth, kerb, from } = section;
  const all = width + 2 * carWidth;
  const left = carWidth;
  const right = carWidth + width;
  // Drawn as measured from the left, then turned round where it is the right.
  const shown = gap === undefined ? (width - carWidth) / 2 : Math.min(Math.max(gap, -carWidth), width);
  const car = left + shown;
  const [gapFrom, gapTo] = [Math.min(left, car), Math.max(left, car)];
  const body = `M${car} ${ground - 0.35}v-0.35q0 -0.15 0.15 -0.15h0.1l0.15 -0.45q0.05 -0.1 0.15 -0.1h${carWidth - 1.1}q0.1 0 0.15 0.1l0.15 0.45h0.1q0.15 0 0.15 0.15v0.35z`;
  return (
    <svg
      viewBox={`0 0 ${all} ${height}`}
      aria-hidden="true"
      className={styles["drawing"]}
      data-from={from}
      data-unseen={gap === undefined || undefined}
    >
      <g transform={from === "right" ? `translate(${all} 0) scale(-1 1)` : undefined}>
        <path d={`M0 ${ground + 0.12}H${left}M${right} ${ground + 0.12}H${all}`} className={styles["land"]} />
        <rect x={left} y={ground} width={width} height={thickness} className={styles["road"]} />
        {kerb > 0 && (
          <path
            d={`M${left} ${ground + thickness / 2}h${kerb}`}
            strokeWidth={thickness}
            className={styles["kerb"]}
          />
        )}
        {gap !== undefined && gap !== 0 && (
          <>
            <rect x={gapFrom} y={ground - 1} width={gapTo - gapFrom} height={1} className={styles["gap"]} />
            <path d={`M${gapFrom} ${ground - 0.5}H${gapTo}`} className={styles["length"]} />
          </>
        )}
        <path d={`M${right} 0.2V${ground + thickness}`} className={styles["edge"]} />
        <path d={`M${left} 0.05V${ground + thickness}`} className={styles["measured"]} />
        <path d={body} className={styles["car"]} />
        {[car + 0.05, car + carWidth - wheel.width - 0.05].map((x) => (
          <rect key={x} x={x} y={ground - wheel.height} {...wheel} rx={0.06} className={styles["wheel"]} />
        ))}
      </g>
    </svg>
  );
}
