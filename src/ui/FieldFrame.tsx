import { type ReactNode, useId } from "react";
import type { FieldProblem } from "#domain";
import styles from "./Field.module.css";
import { Spoken } from "./Spoken.tsx";

/** What every labelled control may be given. */
export interface Labelled {
  readonly label: string;
  /** The label is read out but not drawn, where the place already says it. */
  readonly labelHidden?: boolean | undefined;
  readonly hint?: ReactNode;
  readonly problem?: FieldProblem | undefined;
}

/** The attributes that tie a control to its label, hint and problem. */
export interface ControlTies {
  readonly id: string;
  readonly "aria-describedby": string | undefined;
  readonly "aria-invalid": true | undefined;
}

interface FieldFrameProps extends Labelled {
  /** The control's id, where the caller needs to know it. */
  readonly id?: string | undefined;
  readonly children: (ties: ControlTies) => ReactNode;
}

/** Label above, control, hint and problem below, tied together for those who listen. */
export function FieldFrame({ label, labelHidden, hint, problem, id: given, children }: FieldFrameProps) {
  const made = useId();
  const id = given ?? made;
  const hintId = hint === undefined ? undefined : `${id}-hint`;
  const problemId = problem === undefined ? undefined : `${id}-problem`;
  const describedBy = [problemId, hintId].filter((one) => one !== undefined).join(" ");
  return (
    <div className={styles["frame"]}>
      <label htmlFor={id} className={styles["label"]}>
        {labelHidden === true ? <Spoken>{label}</Spoken> : label}
      </label>
      {children({
        id,
        "aria-describedby": describedBy === "" ? undefined : describedBy,
        "aria-invalid": problem === undefined ? undefined : true,
      })}
      {problem !== undefined && (
        <p id={problemId} className={styles["problem"]}>
          {sayProblem(problem)}
        </p>
      )}
      {hint !== undefined && (
        <div id={hintId} className={styles["hint"]}>
          {hint}
        </div>
      )}
    </div>
  );
}

/** A problem as running text: "Seconds go up to 59. Write 1:15.000." */
export function sayProblem(problem: FieldProblem): string {
  if (typeof problem === "string") return problem;
  return `${ended(problem.wrong)} ${ended(problem.right)}`;
}

function ended(sentence: string): string {
  return /[.?!:]$/.test(sentence) ? sentence : `${sentence}.`;
}
