import { type ReactNode, useId, useRef, useState } from "react";
import styles from "./Disclosure.module.css";
import { useOpenedInSight } from "./useOpenedInSight.ts";

export interface DisclosureProps {
  /** The question, or the name of what is folded away. */
  readonly title: string;
  /** The short answer, readable while folded. */
  readonly answer?: ReactNode;
  readonly startOpen?: boolean;
  readonly level?: 2 | 3 | 4;
  /** Told when it is opened or folded, for whoever wants to remember it. */
  readonly onToggle?: (open: boolean) => void;
  /** Drawn only while open. */
  readonly children: ReactNode;
}

/** A folded question that already gives its answer. */
export function Disclosure(props: DisclosureProps) {
  const { title, answer, startOpen = false, level = 3, onToggle, children } = props;
  const [open, setOpen] = useState(startOpen);
  const [isPressed, setPressed] = useState(false);
  const part = useRef<HTMLDivElement>(null);
  useOpenedInSight(open && isPressed, part);
  const id = useId();
  const Heading = `h${level}` as const;
  const toggle = () => {
    setOpen(!open);
    setPressed(true);
    onToggle?.(!open);
  };
  return (
    <div ref={part}>
      <Heading className={styles["heading"]}>
        <button
          type="button"
          aria-expanded={open}
          aria-controls={id}
          onClick={toggle}
          className={styles["head"]}
        >
          <span className={styles["title"]}>{title}</span>
          {answer !== undefined && <span className={styles["answer"]}>{answer}</span>}
          <span aria-hidden="true" className={styles["state"]}>
            {open ? "hide" : "open"}
          </span>
        </button>
      </Heading>
      <div id={id} hidden={!open} className={styles["body"]}>
        {open && children}
      </div>
    </div>
  );
}
