import { countTry } from "#db";
import type { Drill, Id } from "#domain";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { drillWords } from "#words";
import styles from "./DrillCount.module.css";
import { TypedCount } from "./TypedCount.tsx";

interface DrillCountProps {
  readonly runId: Id;
  readonly drill: Drill;
  readonly corner: number | undefined;
  readonly good: number;
  readonly tries: number;
  /** There is room for the keys alone; what is typed as a whole is typed behind another key. */
  readonly isTight: boolean;
}

/** Tries of a drill, counted by two large keys, or typed as a whole: "7 of 10". */
export function DrillCount({ runId, drill, corner, good, tries, isTight }: DrillCountProps) {
  const write = useWrite();
  const count = (isGood: boolean) =>
    void write((book) => countTry(book, { runId, drill, corner, isGood }), { isUndoOffered: true });
  const [worked, not] = drillWords[drill].keys;
  return (
    <div className={styles["count"]}>
      <Button size="between" className={styles["key"]} onClick={() => count(true)}>
        {worked}
      </Button>
      <Button size="between" className={styles["key"]} onClick={() => count(false)}>
        {not}
      </Button>
      <output className={styles["sum"]} aria-label="Counted">
        {good} of {tries}
      </output>
      {!isTight && <TypedCount runId={runId} drill={drill} corner={corner} />}
    </div>
  );
}
