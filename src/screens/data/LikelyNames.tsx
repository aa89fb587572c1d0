import type { LikelyName } from "#db";
import { Choice } from "#ui/Choice.tsx";
import styles from "./Import.module.css";
import { keyOfLikely, type LikelyAnswer } from "./likelyAnswers.ts";

interface LikelyNamesProps {
  readonly likely: readonly LikelyName[];
  readonly answers: ReadonlyMap<string, LikelyAnswer>;
  readonly onAnswer: (key: string, answer: LikelyAnswer) => void;
}

/** Names of the table that may be meant for others: each is asked about, none is joined unasked. */
export function LikelyNames({ likely, answers, onAnswer }: LikelyNamesProps) {
  if (likely.length === 0) return null;
  return (
    <div className={styles["stack"]}>
      <h3>Names that may be the same</h3>
      {likely.map((one) => {
        const key = keyOfLikely(one);
        return (
          <Choice<LikelyAnswer>
            key={key}
            size="between"
            label={`Is the ${one.kind} “${one.name}” your “${one.old}”?`}
            value={answers.get(key)}
            options={[
              { value: "old", label: "it is" },
              { value: "new", label: `a new ${one.kind}` },
            ]}
            onChange={(answer) => onAnswer(key, answer)}
          />
        );
      })}
    </div>
  );
}
