import { type CalendarDate, comboName, type Id } from "#domain";
import { useCombos, useFigures, useSessionsInDoubt } from "#live";
import type { RigRecordDay, SideOfStep } from "#stats";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { SessionsInDoubt } from "#ui/SessionsInDoubt.tsx";
import { counted, sayRigStep, sayUsual } from "#words";
import styles from "./Rig.module.css";

interface BeforeAfterProps {
  readonly rigId: Id;
  /** All records in their order. */
  readonly records: readonly RigRecordDay[];
  readonly today: CalendarDate;
}

/** The combos driven in the four weeks before a record began and after it, by what their runs were driven with. */
export function BeforeAfter({ rigId, records, today }: BeforeAfterProps) {
  const { value: steps, isRenewing } = useFigures("rigSteps", { rigId, records, today });
  const combos = useCombos();
  const ahead = useSessionsInDoubt(today);
  if (steps === undefined || combos === undefined) return <p>Working out the laps before and after</p>;
  const named = new Map(combos.map((combo) => [combo.id, comboName(combo)]));
  return (
    <Part title="Laps before and after" level={3}>
      <SessionsInDoubt sessions={ahead} today={today} />
      {steps.length === 0 ? (
        <p className={styles["soft"]}>
          No combo has a session with 5 pace laps both in the four weeks before this record and in the four
          after its beginning. One in which the settings changed is on neither side.
        </p>
      ) : (
        <div aria-busy={isRenewing} className={styles["form"]}>
          <ul className={styles["steps"]} aria-label="Usual lap in the four weeks before and after">
            {steps.map(({ comboId, before, after, mixed, step }) => (
              <li key={comboId}>
                <strong>
                  <Name>{named.get(comboId) ?? "a deleted combo"}</Name>
                </strong>
                <span>
                  usual lap before {sideOf(before)}, after {sideOf(after)}
                  {mixed > 0 && `; ${counted(mixed, "session")} with both settings on neither side`}
                </span>
                <span>at the change: {sayRigStep(step)}</span>
              </li>
            ))}
          </ul>
          <p className={styles["soft"]}>
            Four weeks to either side. At the change, what practice, breaks and other records do by themselves
            is allowed for, not what else was different on those evenings: pairs of runs with both settings
            say more.
          </p>
        </div>
      )}
    </Part>
  );
}

function sideOf({ usual, sessions }: SideOfStep): string {
  return `${sayUsual(usual.ms, usual.decimals)} in ${counted(sessions, "session")}`;
}
