import { VerdictShape, type VerdictShapeOf } from "#charts/verdict/VerdictShape.tsx";
import type { VerdictWords } from "#words";
import styles from "./VerdictHead.module.css";

interface VerdictHeadProps {
  /** Undefined while it is worked out: its place is kept, and nothing is said. */
  readonly words: VerdictWords | undefined;
  readonly shape: VerdictShapeOf | undefined;
}

/** The word with its shape, and the figure it rests on, as large as the screen allows. */
export function VerdictHead({ words, shape }: VerdictHeadProps) {
  return (
    <div className={styles["head"]} aria-busy={words === undefined}>
      <div className={styles["line"]}>
        {shape !== undefined && <VerdictShape of={shape} />}
        <h2 className={styles["word"]}>{words?.word ?? " "}</h2>
      </div>
      <p className={styles["figure"]}>{words?.figure ?? " "}</p>
      <p className={styles["about"]}>{words?.about ?? " "}</p>
    </div>
  );
}
