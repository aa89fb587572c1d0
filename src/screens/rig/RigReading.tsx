import { IntervalLine } from "#charts/interval/IntervalLine.tsx";
import type { RigAnswer } from "#live";
import { rigAnswerShift, sayRigAnswer } from "#words";
import styles from "./RigFront.module.css";

interface RigReadingProps {
  readonly answer: RigAnswer;
  /** How far the line goes at least, ms. */
  readonly reach: number;
}

/** What became of a change, as a sentence and as an interval. */
export function RigReading({ answer, reach }: RigReadingProps) {
  const shift = rigAnswerShift(answer);
  return (
    <>
      <p className={styles["found"]}>{sayRigAnswer(answer)}</p>
      {shift && <IntervalLine {...shift} reach={reach} />}
    </>
  );
}
