import styles from "./LapBar.module.css";

/** What the bars of a run's laps are drawn by, ms. */
export interface LapBars {
  readonly usualMs: number;
  /** The distance that fills a bar's half. */
  readonly reachMs: number;
}

/** A bar: so many hundredths of its half, to the slower side or with a minus to the faster; 101 and more is broken off. */
export function barOf(ms: number | undefined, bars: LapBars | undefined): number | undefined {
  if (ms === undefined || bars === undefined) return undefined;
  const hundredths = Math.round(((ms - bars.usualMs) / Math.max(1, bars.reachMs)) * 100);
  return Math.max(-101, Math.min(101, hundredths));
}

/**
 * How far a lap lies from the usual one: to the left of the middle faster, to the right slower. One that lies farther than
 * the bar is long has an open end. The figures beside it say the same, so it is for the eye alone.
 */
export function LapBar({ hundredths }: { readonly hundredths: number }) {
  return (
    <span aria-hidden="true" className={styles["bar"]}>
      <span
        className={styles["length"]}
        data-way={hundredths < 0 ? "faster" : "slower"}
        data-far={Math.abs(hundredths) > 100 || undefined}
        style={{ inlineSize: `${Math.min(100, Math.abs(hundredths)) / 2}%` }}
      />
    </span>
  );
}
