import { type ReactNode, useId } from "react";
import styles from "./Checkbox.module.css";
import { classes } from "./classes.ts";

export interface CheckboxProps {
  readonly label: ReactNode;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly hint?: ReactNode;
  readonly disabled?: boolean;
  readonly size?: "small" | "between";
}

/** Yes or no. */
export function Checkbox({ label, checked, onChange, hint, disabled, size }: CheckboxProps) {
  const id = useId();
  return (
    <div>
      <label className={classes(styles["label"], size === "between" && styles["between"])}>
        <input
          type="checkbox"
          checked={checked}
          disabled={disabled}
          aria-describedby={hint === undefined ? undefined : id}
          onChange={(event) => onChange(event.target.checked)}
          className={styles["box"]}
        />
        <span>{label}</span>
      </label>
      {hint !== undefined && (
        <div id={id} className={styles["hint"]}>
          {hint}
        </div>
      )}
    </div>
  );
}
