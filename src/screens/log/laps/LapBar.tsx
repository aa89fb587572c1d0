import styles from "./LapBar.module.css";

/** What the bars of a run's laps are drawn by, ms. */
export interface LapBars {
  readonly usualMs: number;
  /** The distance that fills a bar's half. */
  readonly reachMs: number;
}

/**
 * How far a lap lies from the usual one: to the left of the middle faster, to the right slower. One that lies farther than
 * the bar is long has an open end. The figures beside it say the same, so it is for the eye alone.
 */
export function LapBar({ ms, bars }: { readonly ms: number; readonly bars: LapBars }) {
  const away = ms - bars.usualMs;
  const share = Math.min(1, Math.abs(away) / Math.max(1, bars.reachMs));
  const isFar = Math.abs(away) > bars.reachMs;
  return (
    <span aria-hidden="true" className={styles["bar"]}>
      <span
        className={styles["length"]}
        data-way={away < 0 ? "faster" : "slower"}
        data-far={isFar || undefined}
        style={{ inlineSize: `${(share * 50).toFixed(1)}%` }}
      />
    </span>
  );
}
