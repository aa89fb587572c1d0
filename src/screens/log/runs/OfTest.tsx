import { leaveTest, rigs, rigTests } from "#db";
import type { Id, Run, RunOfTest } from "#domain";
import { useRows, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { saidSides, sayRunOfTest } from "#words";
import styles from "./RunDialog.module.css";

interface OfTestProps {
  readonly run: Run;
  /** Its place in the rig test. */
  readonly place: RunOfTest;
}

/** A run of a rig test: with which setting it was driven, whatever record was in force, and the way out of the test. */
export function OfTest({ run, place }: OfTestProps) {
  const write = useWrite();
  const sides = useRows((book) => sidesOf(book, run.comboId, place.id), [run.comboId, place.id]);
  const leave = () => void write((book) => leaveTest(book, run.id), { isUndoOffered: true });
  return (
    <div className={styles["form"]}>
      <p>
        <Name>{sayRunOfTest(place, sides)}</Name>
      </p>
      <div>
        <Button size="between" onClick={leave}>
          Take this run out of the test
        </Button>
      </div>
    </div>
  );
}

async function sidesOf(book: Parameters<typeof rigTests>[0], comboId: Id, testId: Id) {
  const test = (await rigTests(book, comboId)).find(({ id }) => id === testId);
  return test && saidSides(test, await rigs(book));
}
