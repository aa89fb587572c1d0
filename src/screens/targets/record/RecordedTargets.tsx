import { sayDate } from "#domain";
import type { DrivenCombo } from "#live";
import type { TargetRecord } from "#stats";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { counted, sayChance, sayOutcome, sayOutcomes, sayTarget } from "#words";
import styles from "./RecordPage.module.css";

interface RecordedTargetsProps {
  readonly targets: readonly TargetRecord[];
  readonly combos: readonly DrivenCombo[];
}

/** Every chance that was told, target by target, and what became of it. */
export function RecordedTargets({ targets, combos }: RecordedTargetsProps) {
  return (
    <Part title="What was said, and when">
      {targets.map((target, index) => (
        <Disclosure
          key={target.said[0]?.id ?? index}
          title={titleOf(target)}
          answer={
            <>
              <strong>{sayOutcomes(target.said.map(({ outcome }) => outcome))}</strong> ·{" "}
              <Name>{combos.find(({ id }) => id === target.comboId)?.name ?? "a combo that is gone"}</Name> ·{" "}
              {counted(target.said.length, "forecast")}
            </>
          }
          startOpen={index === 0}
        >
          <ul className={styles["said"]}>
            {target.said.map(({ id, madeOn, chance, outcome }) => (
              <li key={id} className={styles["row"]}>
                <span>{sayDate(madeOn)}</span>
                <span className={styles["figure"]}>{sayChance(chance)}</span>
                <span aria-hidden="true" className={styles["trough"]}>
                  <span className={styles["fill"]} style={{ inlineSize: `${Math.round(chance * 100)}%` }} />
                </span>
                <span className={styles["soft"]}>{sayOutcome(outcome)}</span>
              </li>
            ))}
          </ul>
        </Disclosure>
      ))}
    </Part>
  );
}

function titleOf({ wanted, by }: TargetRecord): string {
  return wanted === undefined ? `A target by ${sayDate(by)} that is gone` : sayTarget({ ...wanted, by });
}
