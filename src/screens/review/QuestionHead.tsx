import type { ReactNode } from "react";
import styles from "./Questions.module.css";

interface QuestionHeadProps {
  readonly title: string;
  /** The answer in words and as a picture, while what is behind it is hidden. */
  readonly answer: string;
  readonly picture: ReactNode;
  readonly isOpen: boolean;
  /** What it opens stands elsewhere: the picture stays. */
  readonly isBeside: boolean;
  /** Id of what it opens. */
  readonly controls: string;
  readonly onToggle: () => void;
}

/** A question as one line: its answer in words and as a small picture, and behind it all the rest. */
export function QuestionHead({
  title,
  answer,
  picture,
  isOpen,
  isBeside,
  controls,
  onToggle,
}: QuestionHeadProps) {
  return (
    <h2 className={styles["heading"]}>
      <button
        type="button"
        aria-expanded={isOpen}
        aria-controls={controls}
        onClick={onToggle}
        className={styles["head"]}
      >
        <span className={styles["title"]}>{title}</span>
        {!isOpen && <span className={styles["answer"]}>{answer}</span>}
        {(!isOpen || isBeside) && <span className={styles["picture"]}>{picture}</span>}
        <span aria-hidden="true" className={styles["state"]}>
          {isOpen ? "hide" : "open"}
        </span>
      </button>
    </h2>
  );
}
