import { IntervalLine } from "#charts/interval/IntervalLine.tsx";
import { comboName, type RigSettings } from "#domain";
import { type RigAnswer, type RigTestPage, useCombos } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { counted, saidSides, sayTestOfSide, shiftOf } from "#words";
import styles from "./RigFront.module.css";
import { saidOfTest } from "./rigWords.ts";

interface LastTestProps {
  /** All tests, the one planned first comes first. */
  readonly tests: readonly RigTestPage[];
  readonly records: readonly RigSettings[];
  /** The last change, which may be what a test has answered already. */
  readonly latest: RigAnswer | undefined;
}

/** What the test that was over last found; nothing where that stands as the answer about the last change. */
export function LastTest({ tests, records, latest }: LastTestProps) {
  const combos = useCombos();
  const last = tests
    .filter(({ report }) => report.isOver)
    .toSorted((a, b) => (a.test.endedAt ?? a.test.createdAt) - (b.test.endedAt ?? b.test.createdAt))
    .at(-1);
  if (last === undefined || latest?.tests.at(-1)?.id === last.test.id) return null;
  const { test, report } = last;
  const combo = combos?.find(({ id }) => id === test.comboId);
  const { verdict } = report;
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
      {verdict.known && <IntervalLine {...shiftOf(verdict.value, "B")} />}
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
