import { type ComponentType, lazy, Suspense, useState } from "react";
import { type ChangedQuestion, largestChange } from "#stats";
import { Disclosure } from "#ui/Disclosure.tsx";
import { answerDifferent, answerPractised, answerSteadier, answerTime } from "./answers.ts";
import type { Looked } from "./looked.ts";
import styles from "./Questions.module.css";

interface QuestionsProps {
  readonly looked: Looked;
  readonly marginPercent: number;
}

type Part = ComponentType<{ readonly looked: Looked; readonly marginPercent: number }>;

interface Question {
  readonly id: ChangedQuestion | "practised";
  readonly title: string;
  readonly answer: (looked: Looked) => string;
  readonly Body: Part;
}

const questions: readonly Question[] = [
  {
    id: "steadier",
    title: "Am I getting steadier?",
    answer: answerSteadier,
    Body: lazy(() => import("./SteadierPart.tsx")),
  },
  {
    id: "time",
    title: "Where does the time go?",
    answer: answerTime,
    Body: lazy(() => import("./TimePart.tsx")),
  },
  {
    id: "different",
    title: "What was different?",
    answer: answerDifferent,
    Body: lazy(() => import("./DifferentPart.tsx")),
  },
  {
    id: "practised",
    title: "How much did I practise?",
    answer: answerPractised,
    Body: lazy(() => import("./PractisedPart.tsx")),
  },
];

/** The questions after the first: folded, each with its answer; the one with the largest change stands open. */
export function Questions({ looked, marginPercent }: QuestionsProps) {
  const largest = largestChange(looked.review);
  return (
    <div className={styles["questions"]}>
      {questions.map((question) => (
        <OneQuestion
          key={`${question.id} ${looked.comboId} ${largest}`}
          question={question}
          startOpen={question.id === largest}
          looked={looked}
          marginPercent={marginPercent}
        />
      ))}
    </div>
  );
}

interface OneQuestionProps extends QuestionsProps {
  readonly question: Question;
  readonly startOpen: boolean;
}

function OneQuestion({
  question: { title, answer, Body },
  startOpen,
  looked,
  marginPercent,
}: OneQuestionProps) {
  const [isOpen, setOpen] = useState(startOpen);
  return (
    <Disclosure
      title={title}
      // Open, the first chart's title says it.
      answer={isOpen ? undefined : answer(looked)}
      level={2}
      startOpen={startOpen}
      onToggle={setOpen}
    >
      <Suspense fallback={<p>Drawing</p>}>
        <div className={styles["body"]}>
          <Body looked={looked} marginPercent={marginPercent} />
        </div>
      </Suspense>
    </Disclosure>
  );
}
