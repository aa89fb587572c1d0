import type { ComponentProps } from "react";
import { classes } from "./classes.ts";
import styles from "./Field.module.css";
import { FieldFrame, type Labelled } from "./FieldFrame.tsx";

/** One of several values to choose from. */
export interface Option<T extends string = string> {
  readonly value: T;
  readonly label: string;
}

export interface SelectProps<T extends string>
  extends Omit<ComponentProps<"select">, "onChange" | "value" | "children" | "multiple" | "size">,
    Labelled {
  readonly value: T;
  readonly options: readonly Option<T>[];
  readonly onChange: (value: T) => void;
}

/** One of many, in the browser's own list. */
export function Select<T extends string>(props: SelectProps<T>) {
  const { label, labelHidden, hint, problem, id, value, options, onChange, className, ...rest } = props;
  const choose = (typed: string) => {
    const chosen = options.find((option) => option.value === typed);
    if (chosen !== undefined) onChange(chosen.value);
  };
  return (
    <FieldFrame label={label} labelHidden={labelHidden} hint={hint} problem={problem} id={id}>
      {(ties) => (
        <select
          {...rest}
          {...ties}
          value={value}
          onChange={(event) => choose(event.target.value)}
          className={classes(styles["input"], className)}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}
