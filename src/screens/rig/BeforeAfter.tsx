import { type CalendarDate, comboName, type Id } from "#domain";
import { useCombos, useFigures, useSessionsInDoubt } from "#live";
import { printAddress } from "#state/address.ts";
import type { RigRecordDay } from "#stats";
import { Part } from "#ui/Part.tsx";
import { SessionsInDoubt } from "#ui/SessionsInDoubt.tsx";
import styles from "./Rig.module.css";
import { RigVerdict } from "./RigVerdict.tsx";

interface BeforeAfterProps {
  readonly rigId: Id;
  /** All records in their order. */
  readonly records: readonly RigRecordDay[];
  readonly today: CalendarDate;
}

/** The combos driven in the four weeks before a record began and after it, by what their runs were driven with. */
export function BeforeAfter({ rigId, records, today }: BeforeAfterProps) {
  const { value: steps, isRenewing } = useFigures("rigSteps", { rigId, records, today });
  const { value: tests } = useFigures("rigTests", { rigId });
  const combos = useCombos();
  const ahead = useSessionsInDoubt(today);
  if (steps === undefined || tests === undefined || combos === undefined)
    return <p>Working out the laps before and after</p>;
  const named = new Map(combos.map((combo) => [combo.id, comboName(combo)]));
  // Pairs of runs say most: combos with them stand first.
  const ids = [...new Set([...tests, ...steps].map(({ comboId }) => comboId))];
  return (
    <Part title="Did it help?" level={3}>
      <SessionsInDoubt sessions={ahead} today={today} />
      {ids.length === 0 ? (
        <p className={styles["soft"]}>
          No combo has a session with 5 pace laps both in the four weeks before this record and in the four
          after its beginning.
        </p>
      ) : (
        <>
          <ul className={styles["verdicts"]} aria-label="Each combo before and after" aria-busy={isRenewing}>
            {ids.map((comboId) => (
              <li key={comboId}>
                <RigVerdict
                  name={named.get(comboId) ?? "a deleted combo"}
                  tests={tests.filter((test) => test.comboId === comboId)}
                  step={steps.find((step) => step.comboId === comboId)}
                />
              </li>
            ))}
          </ul>
          {steps.length > 0 && (
            <p className={styles["soft"]}>
              Each dot is the usual lap of one session, in the four weeks before the change and in the four
              after it. What practice, breaks and other records do by themselves is allowed for, so the
              sentence can say less than the two strips seem to; what else was different on those evenings is
              not known. <a href={printAddress({ place: "rig", part: "plan" })}>A test in pairs of runs</a>{" "}
              says more.
            </p>
          )}
        </>
      )}
    </Part>
  );
}
