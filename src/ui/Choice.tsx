import { type ReactNode, useId } from "react";
import type { FieldProblem } from "#domain";
import styles from "./Choice.module.css";
import { classes } from "./classes.ts";
import { sayProblem } from "./FieldFrame.tsx";
import type { Option } from "./Select.tsx";
import { Spoken } from "./Spoken.tsx";

export interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly labelHidden?: boolean;
  /** Undefined while nothing is chosen. */
  readonly value: T | undefined;
  readonly options: readonly (Option<T> & { readonly disabled?: boolean })[];
  readonly onChange: (value: T) => void;
  readonly hint?: ReactNode;
  readonly problem?: FieldProblem | undefined;
  readonly size?: "small" | "between";
}

/** One of a few, as words on a ruled line. */
export function Choice<T extends string>(props: ChoiceProps<T>) {
  const { label, labelHidden, value, options, onChange, hint, problem, size } = props;
  const id = useId();
  const describedBy = [problem !== undefined && `${id}-problem`, hint !== undefined && `${id}-hint`]
    .filter((one) => one !== false)
    .join(" ");
  return (
    <fieldset aria-describedby={describedBy === "" ? undefined : describedBy}>
      <legend className={styles["legend"]}>{labelHidden === true ? <Spoken>{label}</Spoken> : label}</legend>
      <div className={classes(styles["line"], size === "between" && styles["between"])}>
        {options.map((option) => (
          <label key={option.value} className={styles["option"]}>
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              disabled={option.disabled}
              onChange={() => onChange(option.value)}
              className={styles["radio"]}
            />
            {option.label}
          </label>
        ))}
      </div>
      {problem !== undefined && (
        <p id={`${id}-problem`} className={styles["problem"]}>
          {sayProblem(problem)}
        </p>
      )}
      {hint !== undefined && (
        <div id={`${id}-hint`} className={styles["hint"]}>
          {hint}
        </div>
      )}
    </fieldset>
  );
}
