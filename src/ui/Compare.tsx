import { Button } from "./Button.tsx";
import styles from "./Compare.module.css";

interface CompareButtonProps {
  /** What it stands beside: "run 3". */
  readonly name: string;
  /** What was chosen first, if anything was; `isThis` where it is this one. */
  readonly first: { readonly name: string; readonly isThis: boolean } | undefined;
  readonly onChoose: () => void;
}

/** Chooses a run or a session to be compared; the second one chosen leads to both side by side. */
export function CompareButton({ name, first, onChoose }: CompareButtonProps) {
  const isFirst = first?.isThis === true;
  return (
    <Button
      variant="quiet"
      aria-pressed={first === undefined ? undefined : isFirst}
      aria-label={first === undefined || isFirst ? `Compare ${name}` : `Compare ${first.name} with ${name}`}
      onClick={onChoose}
    >
      {first === undefined ? "Compare" : isFirst ? "Chosen" : "With this"}
    </Button>
  );
}

interface CompareBarProps {
  readonly name: string;
  readonly kind: "run" | "session";
  readonly onCancel: () => void;
}

/** Says what was chosen first, and what is missing. */
export function CompareBar({ name, kind, onCancel }: CompareBarProps) {
  return (
    <div role="status" className={styles["bar"]}>
      <p>
        Compare {name} with … Choose another {kind}.
      </p>
      <Button onClick={onCancel}>Cancel</Button>
    </div>
  );
}
