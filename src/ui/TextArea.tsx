import type { ComponentProps } from "react";
import { classes } from "./classes.ts";
import styles from "./Field.module.css";
import { FieldFrame, type Labelled } from "./FieldFrame.tsx";

export interface TextAreaProps extends Omit<ComponentProps<"textarea">, "onChange" | "value">, Labelled {
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** Several lines of text. */
export function TextArea(props: TextAreaProps) {
  const { label, labelHidden, hint, problem, id, value, onChange, className, ...rest } = props;
  return (
    <FieldFrame label={label} labelHidden={labelHidden} hint={hint} problem={problem} id={id}>
      {(ties) => (
        <textarea
          rows={3}
          {...rest}
          {...ties}
          value={value}
          onChange={(event) => onChange(event.target.value)}
          className={classes(styles["input"], className)}
        />
      )}
    </FieldFrame>
  );
}
