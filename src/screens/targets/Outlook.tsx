import type { CalendarDate, Target } from "#domain";
import { useFigures } from "#live";
import type { ForecastKind, TargetOutlook } from "#stats";
import {
  sayMilestones,
  sayNoForecast,
  sayTargetChance,
  sayTargetDates,
  sayTargetDatesExactly,
  sayTargetRests,
  usualLapMeaning,
} from "#words";
import { FutureDots } from "./FutureDots.tsx";
import styles from "./Outlook.module.css";

interface OutlookProps {
  readonly target: Target;
  readonly kind: ForecastKind;
  readonly today: CalendarDate;
}

/** Whether and when an open target is likely to be reached, or what is missing to say so. */
export function Outlook({ target, kind, today }: OutlookProps) {
  const { comboId, value, by } = target;
  const { value: outlook } = useFigures("targetOutlook", { comboId, kind, value, by, today });
  if (outlook === undefined) return <p className={styles["basis"]}>Working out the chance</p>;
  if (!outlook.known) return <p className={styles["basis"]}>{sayNoForecast(outlook.reason)}</p>;
  return <Found outlook={outlook.value} kind={kind} by={by} today={today} />;
}

interface FoundProps {
  readonly outlook: TargetOutlook;
  readonly kind: ForecastKind;
  readonly by: CalendarDate | undefined;
  readonly today: CalendarDate;
}

function Found({ outlook, kind, by, today }: FoundProps) {
  const { byDate } = outlook;
  const steps = sayMilestones(outlook, kind);
  return (
    <div className={styles["outlook"]}>
      {byDate !== undefined && by !== undefined && (
        <>
          <p className={styles["chance"]}>{sayTargetChance(byDate.chance, by)}</p>
          <FutureDots chance={byDate.chance} />
        </>
      )}
      <p>{sayTargetDates(outlook, today)}</p>
      <p className={styles["basis"]}>{sayTargetDatesExactly(outlook)}</p>
      {kind === "median" && <p className={styles["basis"]}>{usualLapMeaning}</p>}
      {steps !== undefined && <p>{steps}</p>}
      <p className={styles["basis"]}>{sayTargetRests(outlook)}</p>
    </div>
  );
}
