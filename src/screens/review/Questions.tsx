import { type ComponentType, Suspense } from "react";
import { laterPart } from "#ui/laterPart.ts";
import {
  answerDifferent,
  answerFaster,
  answerPractised,
  answerRig,
  answerSteadier,
  answerTime,
} from "./answers.ts";
import { FasterPart } from "./FasterPart.tsx";
import type { Looked } from "./looked.ts";
import { QuestionHead } from "./QuestionHead.tsx";
import { questionPictures } from "./QuestionPicture.tsx";
import styles from "./Questions.module.css";
import type { OpenParts } from "./useOpenParts.ts";

interface QuestionsProps {
  readonly looked: Looked;
  readonly marginPercent: number;
  readonly parts: OpenParts;
  /** The questions stand beside what they open, not above it. */
  readonly isDesk: boolean;
}

type Part = ComponentType<{ readonly looked: Looked; readonly marginPercent: number }>;

interface Question {
  readonly id: keyof typeof questionPictures;
  readonly title: string;
  readonly answer: (looked: Looked) => string;
  readonly Body: Part;
  /** Whether there is anything to ask about; absent means always. */
  readonly isAsked?: (looked: Looked) => boolean;
}

const questions: readonly Question[] = [
  { id: "faster", title: "Am I getting faster?", answer: answerFaster, Body: FasterPart },
  {
    id: "steadier",
    title: "Am I getting steadier?",
    answer: answerSteadier,
    Body: laterPart(() => import("./SteadierPart.tsx").then((file) => file.default)),
  },
  {
    id: "time",
    title: "Where does the time go?",
    answer: answerTime,
    Body: laterPart(() => import("./TimePart.tsx").then((file) => file.default)),
  },
  {
    id: "different",
    title: "What was different?",
    answer: answerDifferent,
    Body: laterPart(() => import("./DifferentPart.tsx").then((file) => file.default)),
  },
  {
    id: "rig",
    title: "Did the rig help?",
    answer: answerRig,
    Body: laterPart(() => import("./RigPart.tsx").then((file) => file.default)),
    isAsked: ({ rig }) => rig.length > 0,
  },
  {
    id: "practised",
    title: "How much did I practise?",
    answer: answerPractised,
    Body: laterPart(() => import("./PractisedPart.tsx").then((file) => file.default)),
  },
];

/** Where the answer to a question stands on the page. */
export const questionPlace = (id: string) => `question-${id}`;

const askedOf = (looked: Looked) => questions.filter(({ isAsked }) => isAsked?.(looked) ?? true);

/** The questions, each one line with its answer and its picture; what they open stands beside them on a desk. */
export function Questions(props: QuestionsProps) {
  return props.isDesk ? <Beside {...props} /> : <Under {...props} />;
}

function Beside({ looked, marginPercent, parts }: QuestionsProps) {
  const asked = askedOf(looked);
  const opened = asked.filter(({ id }) => parts.isOpen(id));
  return (
    <div className={styles["columns"]}>
      <div className={styles["opened"]}>
        {opened.map(({ id, title, Body }) => (
          <section
            key={id}
            id={questionPlace(id)}
            tabIndex={-1}
            aria-label={title}
            className={styles["section"]}
          >
            <p className={styles["asked"]}>{title}</p>
            <Opened Body={Body} looked={looked} marginPercent={marginPercent} />
          </section>
        ))}
      </div>
      <div className={styles["list"]}>
        {asked.map((question) => (
          <Head
            key={question.id}
            question={question}
            looked={looked}
            parts={parts}
            onOpened={() => goToQuestion(question.id)}
          />
        ))}
      </div>
    </div>
  );
}

/** Brings the answer to a question into view, and the focus to it. */
export function goToQuestion(id: string): void {
  requestAnimationFrame(() => {
    const place = document.getElementById(questionPlace(id));
    place?.focus({ preventScroll: true });
    place?.scrollIntoView({ block: "start" });
  });
}

function Under({ looked, marginPercent, parts }: QuestionsProps) {
  return (
    <div className={styles["questions"]}>
      {askedOf(looked).map((question) => (
        <div key={question.id}>
          <Head question={question} looked={looked} parts={parts} />
          {parts.isOpen(question.id) && (
            <div id={questionPlace(question.id)} tabIndex={-1} className={styles["folded"]}>
              <Opened Body={question.Body} looked={looked} marginPercent={marginPercent} />
            </div>
          )}
        </div>
      ))}
    </div>
  );
}

interface HeadProps extends Pick<QuestionsProps, "looked" | "parts"> {
  readonly question: Question;
  readonly onOpened?: () => void;
}

function Head({ question: { id, title, answer }, looked, parts, onOpened }: HeadProps) {
  const Picture = questionPictures[id];
  const isOpen = parts.isOpen(id);
  return (
    <QuestionHead
      title={title}
      answer={answer(looked)}
      picture={<Picture looked={looked} />}
      isOpen={isOpen}
      isBeside={onOpened !== undefined}
      controls={questionPlace(id)}
      onToggle={() => {
        parts.set(id, !isOpen);
        if (!isOpen) onOpened?.();
      }}
    />
  );
}

interface OpenedProps extends Pick<QuestionsProps, "looked" | "marginPercent"> {
  readonly Body: Part;
}

function Opened({ Body, looked, marginPercent }: OpenedProps) {
  return (
    <Suspense fallback={<p>Drawing</p>}>
      <div className={styles["body"]}>
        <Body looked={looked} marginPercent={marginPercent} />
      </div>
    </Suspense>
  );
}
