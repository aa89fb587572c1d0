import type { ReactNode } from "react";
import { classes } from "./classes.ts";
import styles from "./Ink.module.css";

export interface InkProps {
  readonly tone: "plain" | "gain" | "loss" | "caution" | "soft";
  readonly children: ReactNode;
}

/** Colours text whose words or sign already say the same. */
export function Ink({ tone, children }: InkProps) {
  return <span className={classes(styles["ink"], tone !== "plain" && styles[tone])}>{children}</span>;
}
