import { sayDay } from "#domain";
import { counted } from "#words";
import styles from "./WeekDays.module.css";

interface WeekDaysProps {
  /** Monday to Sunday. */
  readonly days: readonly { readonly date: string; readonly laps: number }[];
}

/** The seven days as seven columns, each as high as its laps, with their number. */
export function WeekDays({ days }: WeekDaysProps) {
  const most = Math.max(1, ...days.map(({ laps }) => laps));
  return (
    <ol className={styles["days"]} aria-label="Laps by day">
      {days.map(({ date, laps }) => (
        <li key={date}>
          <span className={styles["laps"]}>{laps === 0 ? "—" : laps}</span>
          <svg viewBox="0 0 10 10" preserveAspectRatio="none" aria-hidden="true" className={styles["column"]}>
            <rect x={0} y={10 - (10 * laps) / most} width={10} height={(10 * laps) / most} />
          </svg>
          <span className={styles["day"]} title={`${sayDay(date)}: ${counted(laps, "lap")}`}>
            {sayDay(date).slice(0, 3)}
          </span>
        </li>
      ))}
    </ol>
  );
}
