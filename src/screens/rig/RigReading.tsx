import { IntervalLine } from "#charts/interval/IntervalLine.tsx";
import type { RigAnswer } from "#live";
import { rigAnswerShift, sayRigAnswer } from "#words";
import styles from "./RigFront.module.css";
import { TestInterval } from "./TestInterval.tsx";

interface RigReadingProps {
  readonly answer: RigAnswer;
  /** How far the line goes at least, ms. */
  readonly reach: number;
}

/** What became of a change, as a sentence and as an interval. */
export function RigReading({ answer, reach }: RigReadingProps) {
  const test = answer.tests.at(-1);
  const shift = rigAnswerShift(answer);
  return (
    <>
      <p className={styles["found"]}>{sayRigAnswer(answer)}</p>
      {test ? (
        <TestInterval report={test.report} side={test.side} reach={reach} />
      ) : (
        shift && <IntervalLine {...shift} reach={reach} />
      )}
    </>
  );
}
