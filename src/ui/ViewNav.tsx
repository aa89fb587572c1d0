import styles from "./ViewNav.module.css";

/** A view with an address of its own. */
export interface View {
  readonly word: string;
  readonly href: string;
  readonly isHere: boolean;
}

interface ViewNavProps {
  /** What they are views of. */
  readonly label: string;
  readonly views: readonly View[];
}

/** The views of one place, each with an address of its own. */
export function ViewNav({ label, views }: ViewNavProps) {
  return (
    <nav aria-label={label} className={styles["nav"]}>
      {views.map(({ word, href, isHere }) => (
        <a key={word} href={href} aria-current={isHere ? "page" : undefined} className={styles["link"]}>
          {word}
        </a>
      ))}
    </nav>
  );
}
