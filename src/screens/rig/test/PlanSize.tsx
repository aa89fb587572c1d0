import type { TestFigure } from "#domain";
import type { FormField } from "#live";
import { leastPairs, type TestBasis, testLevel } from "#stats";
import { Field } from "#ui/Field.tsx";
import { Part } from "#ui/Part.tsx";
import { sayFoundBy, sayNotWorth, sayTestSize, sayWhySoMany } from "#words";
import { hintOf } from "./hintOf.ts";
import type { PlannedSize } from "./planSize.ts";
import styles from "./Test.module.css";
import type { readEffort } from "./typedPlan.ts";

interface PlanSizeProps {
  /** What is known of the driver's own runs; undefined while it is worked out. */
  readonly basis: TestBasis | undefined;
  readonly figure: TestFigure;
  readonly effort: ReturnType<typeof readEffort>;
  readonly size: PlannedSize | undefined;
  readonly pairs: FormField<string>;
}

/** What the test takes: pairs, runs, evenings, and why; or that it is not worth it. */
export function PlanSize({ basis, figure, effort, size, pairs }: PlanSizeProps) {
  if (basis === undefined || size === undefined)
    return <p className={styles["soft"]}>Looking at your own runs</p>;
  const isOwn = effort.pairs !== undefined;
  const notWorth = size.plan && size.smallestMs !== undefined ? sayNotWorth(size.plan, size.smallestMs) : "";
  return (
    <Part title="What it takes" level={3}>
      <div className={styles["column"]}>
        <div role="status" className={styles["column"]}>
          {notWorth !== "" && <p className={styles["large"]}>{notWorth}</p>}
          {size.size && (
            <p className={notWorth === "" || isOwn ? styles["large"] : undefined}>
              {sayTestSize(size.size, effort.laps.value ?? 0)}
            </p>
          )}
          <p className={styles["soft"]}>{sayWhySoMany(basis.spread[figure], figure)}</p>
          {size.size && sayFoundBy(size.size) !== "" && (
            <p className={styles["soft"]}>{sayFoundBy(size.size)}</p>
          )}
        </div>
        <Field
          label="Pairs of runs"
          hint={hintOf(
            effort.pairs,
            `At least ${leastPairs(testLevel)}. Fixed once the test is planned.`,
            pairs.problem,
          )}
          figures
          size="between"
          inputMode="numeric"
          {...pairs}
        />
      </div>
    </Part>
  );
}
