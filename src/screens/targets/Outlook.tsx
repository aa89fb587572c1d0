import { ChanceLine } from "#charts/way/ChanceLine.tsx";
import type { CalendarDate, Figure, TimeKind } from "#domain";
import type { TargetOutlook } from "#stats";
import { Disclosure } from "#ui/Disclosure.tsx";
import {
  counted,
  sayMilestones,
  sayMostlyAssumption,
  sayNoForecast,
  sayTargetChance,
  sayTargetDates,
  sayTargetRests,
  usualLapMeaning,
} from "#words";
import styles from "./Outlook.module.css";

interface OutlookProps {
  /** Undefined while it is worked out. */
  readonly outlook: Figure<TargetOutlook> | undefined;
  readonly kind: TimeKind;
  readonly by: CalendarDate | undefined;
  readonly today: CalendarDate;
  /** The figures when it was set and now. */
  readonly figures: string;
}

/** Whether and when an open target is likely to be reached, or what is missing to say so. */
export function Outlook({ outlook, kind, by, today, figures }: OutlookProps) {
  if (outlook === undefined) return <p className={styles["basis"]}>Working out the chance</p>;
  if (!outlook.known)
    return (
      <>
        <p className={styles["basis"]}>{sayNoForecast(outlook.reason)}</p>
        <p className={styles["basis"]}>{figures}</p>
      </>
    );
  const steps = sayMilestones(outlook.value, kind, today);
  const { byDate, sessions } = outlook.value;
  const ahead = byDate === undefined ? "" : `, ${byDate.sessions} more by then`;
  return (
    <div className={styles["outlook"]}>
      <ChanceShown outlook={outlook.value} by={by} today={today} />
      {kind === "median" && <p className={styles["basis"]}>{usualLapMeaning}</p>}
      <Disclosure
        title="Steps, and what it rests on"
        answer={`${counted(sessions, "session")}${ahead}`}
        level={4}
      >
        <p>{figures}.</p>
        {steps !== undefined && <p>{steps}</p>}
        <p className={styles["basis"]}>{sayTargetRests(outlook.value)}</p>
      </Disclosure>
    </div>
  );
}

interface ChanceShownProps {
  readonly outlook: TargetOutlook;
  readonly by: CalendarDate | undefined;
  readonly today: CalendarDate;
}

/** A chance in words, as dots on a line of time, and its likely days in words. */
export function ChanceShown({ outlook, by, today }: ChanceShownProps) {
  const { byDate, expected, likelyDays } = outlook;
  return (
    <>
      {byDate !== undefined && by !== undefined && (
        <p className={styles["chance"]}>{sayTargetChance(byDate.chance, by)}</p>
      )}
      {outlook.isMostlyAssumption && <p>{sayMostlyAssumption(outlook)}</p>}
      <ChanceLine chance={{ today, likelyDays, expected, by: byDate === undefined ? undefined : by }} />
      <p>{sayTargetDates(outlook, today)}</p>
    </>
  );
}
