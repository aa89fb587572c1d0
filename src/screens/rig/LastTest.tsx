import { comboName, type RigSettings } from "#domain";
import { type RigTestPage, useCombos } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { counted, saidSides, sayTestOfSide } from "#words";
import styles from "./RigFront.module.css";
import { saidOfTest } from "./rigWords.ts";
import { TestInterval } from "./TestInterval.tsx";

interface LastTestProps {
  readonly page: RigTestPage;
  readonly records: readonly RigSettings[];
  /** How far the line of its interval goes at least, ms. */
  readonly reach: number;
}

/** What the test that was over last found. */
export function LastTest({ page: { test, report }, records, reach }: LastTestProps) {
  const combos = useCombos();
  const combo = combos?.find(({ id }) => id === test.comboId);
  const sides = saidSides(test, records);
  return (
    <section aria-label="The last test" className={styles["answer"]}>
      <p className={styles["about"]}>
        The last test:{" "}
        <a href={printAddress({ place: "rig", testId: test.id })}>
          <Name>{saidOfTest(test, records)}</Name>
        </a>
      </p>
      <p className={styles["found"]}>{sayTestOfSide(report, "B")}</p>
      <TestInterval report={report} side="B" reach={reach} />
      <p className={styles["soft"]}>
        {combo && <Name>{comboName(combo)}</Name>}
        {combo && ", "}
        {counted(report.complete, "pair")} of runs
        {test.kept && (
          <>
            ; kept <Name>{test.kept === "A" ? sides.sayA : sides.sayB}</Name>
          </>
        )}
      </p>
    </section>
  );
}
