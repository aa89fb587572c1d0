import { type ReactNode, useId } from "react";
import { classes } from "./classes.ts";
import styles from "./Part.module.css";
import { Spoken } from "./Spoken.tsx";

export interface PartProps {
  readonly title: ReactNode;
  /** The heading is read out but not drawn. */
  readonly titleHidden?: boolean;
  readonly level?: 1 | 2 | 3;
  /** Small words at the right of the heading. */
  readonly aside?: ReactNode;
  /** A rule under the heading, as above a block of rows. */
  readonly ruled?: boolean;
  readonly children: ReactNode;
}

/** A part of a screen with its heading. */
export function Part({ title, titleHidden, level = 2, aside, ruled, children }: PartProps) {
  const id = useId();
  const Heading = `h${level}` as const;
  const heading = <Heading id={id}>{titleHidden === true ? <Spoken>{title}</Spoken> : title}</Heading>;
  return (
    <section aria-labelledby={id} className={styles["part"]}>
      {titleHidden === true ? (
        heading
      ) : (
        <div className={classes(styles["head"], ruled === true && styles["ruled"])}>
          {heading}
          {aside !== undefined && <span className={styles["aside"]}>{aside}</span>}
        </div>
      )}
      {children}
    </section>
  );
}
