import type { ComponentProps, ReactNode } from "react";
import { classes } from "./classes.ts";
import styles from "./Field.module.css";
import { FieldFrame, type Labelled } from "./FieldFrame.tsx";

type InputProps = Omit<ComponentProps<"input">, "onChange" | "value" | "size">;

export interface FieldProps extends InputProps, Labelled {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Stands behind the input: "m", "percent". */
  readonly unit?: ReactNode;
  /** Figures stand at the right, as in a column. */
  readonly figures?: boolean;
  readonly size?: "small" | "between";
}

/** One line of text. It keeps what was typed, however wrong it is. */
export function Field(props: FieldProps) {
  const { label, labelHidden, hint, problem, id, value, onChange, unit, figures, size, className, ...rest } =
    props;
  const names = classes(
    styles["input"],
    figures === true && styles["figures"],
    size === "between" && styles["between"],
    className,
  );
  return (
    <FieldFrame label={label} labelHidden={labelHidden} hint={hint} problem={problem} id={id}>
      {(ties) => (
        <div className={styles["line"]}>
          <input
            autoComplete="off"
            {...rest}
            {...ties}
            value={value}
            onChange={(event) => onChange(event.target.value)}
            className={names}
          />
          {unit !== undefined && <span className={styles["unit"]}>{unit}</span>}
        </div>
      )}
    </FieldFrame>
  );
}
