import { createContext, memo, type ReactNode, useContext } from "react";
import styles from "./LapBar.module.css";

/** What the bars of a run's laps are drawn by, ms. */
export interface LapBars {
  readonly usualMs: number;
  /** The distance that fills a bar's half. */
  readonly reachMs: number;
}

const Bars = createContext<LapBars | undefined>(undefined);

interface BarsOfProps {
  /** Absent where no usual lap is known to lay the laps beside. */
  readonly bars: LapBars | undefined;
  readonly children: ReactNode;
}

/** What the bars among its children are drawn by; when it changes the rows around them are not drawn again. */
export function BarsOf({ bars, children }: BarsOfProps) {
  return <Bars value={bars}>{children}</Bars>;
}

interface LapBarProps {
  /** Absent where the lap has no time; it has no bar then. */
  readonly ms: number | undefined;
}

/**
 * How far a lap lies from the usual one: to the left of the middle faster, to the right slower. One that lies farther than
 * the bar is long has an open end. The figures beside it say the same, so it is for the eye alone.
 */
export function LapBar({ ms }: LapBarProps) {
  const bars = useContext(Bars);
  if (ms === undefined || bars === undefined) return null;
  return <DrawnBar hundredths={barOf(ms, bars)} />;
}

/** So many hundredths of a bar's half, to the slower side or with a minus to the faster; 101 and more is broken off. */
function barOf(ms: number, { usualMs, reachMs }: LapBars): number {
  const hundredths = Math.round(((ms - usualMs) / Math.max(1, reachMs)) * 100);
  return Math.max(-101, Math.min(101, hundredths));
}

const DrawnBar = memo(function DrawnBar({ hundredths }: { readonly hundredths: number }) {
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
});
