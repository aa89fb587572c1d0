import type { ComponentProps } from "react";
import styles from "./Button.module.css";
import { classes } from "./classes.ts";

export interface ButtonProps extends ComponentProps<"button"> {
  /** The one main act is primary; caution is for what cannot be undone. */
  readonly variant?: "primary" | "plain" | "quiet" | "caution";
  /** "between" is for anything used between two runs: at least 44 × 44 px. */
  readonly size?: "small" | "between";
}

/** A button that submits nothing unless told to. */
export function Button({ variant = "plain", size = "small", className, type, ...rest }: ButtonProps) {
  const names = classes(
    styles["button"],
    variant !== "plain" && styles[variant],
    size === "between" && styles["between"],
    className,
  );
  return <button {...rest} type={type ?? "button"} className={names} />;
}
