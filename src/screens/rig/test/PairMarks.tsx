import type { TestPair, TestProgress } from "#stats";
import { classes } from "#ui/classes.ts";
import { Spoken } from "#ui/Spoken.tsx";
import { sayPairMark } from "#words";
import styles from "./PairMarks.module.css";

/** The pairs of a test in their order: which runs are driven, which is next, which are to come. */
export function PairMarks({ progress }: { readonly progress: TestProgress }) {
  const { pairs, next } = progress;
  return (
    <ol className={styles["pairs"]} aria-label="Pairs of runs">
      {pairs.map((pair) => (
        <li key={pair.n} className={styles["pair"]}>
          <Spoken>{sayPairMark(pair, next)}</Spoken>
          <span aria-hidden="true" className={styles["runs"]}>
            {inOrder(pair).map(({ side, isDriven }) => (
              <span
                key={side}
                className={classes(
                  styles["run"],
                  isDriven && styles["driven"],
                  next?.pair === pair.n && next.side === side && styles["next"],
                )}
              >
                {side}
              </span>
            ))}
          </span>
          <span aria-hidden="true" className={styles["number"]}>
            {pair.n}
          </span>
        </li>
      ))}
    </ol>
  );
}

function inOrder({ first, a, b }: TestPair) {
  const sides = [
    { side: "A", isDriven: a !== undefined },
    { side: "B", isDriven: b !== undefined },
  ] as const;
  return first === "A" ? sides : sides.toReversed();
}
