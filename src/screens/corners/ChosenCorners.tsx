import { type ReactNode, useId } from "react";
import type { Corner } from "#domain";
import { Button } from "#ui/Button.tsx";
import styles from "./ChosenCorners.module.css";
import { toggledCorner } from "./toggledCorner.ts";

interface ChosenCornersProps {
  /** "Corners for tonight". */
  readonly label: ReactNode;
  /** All there are to choose from, in lap order. */
  readonly corners: readonly Pick<Corner, "number" | "name">[];
  readonly chosen: readonly number[];
  /** With the numbers chosen then, in lap order. */
  readonly onChange: (numbers: readonly number[]) => void;
}

/** The row of corner numbers in lap order, each a button that chooses its corner or lets it go. */
export function ChosenCorners({ label, corners, chosen, onChange }: ChosenCornersProps) {
  const id = useId();
  const all = corners.map(({ number }) => number);
  return (
    // biome-ignore lint/a11y/useSemanticElements: the label stands beside its buttons, which a legend cannot
    <div role="group" aria-labelledby={id} className={styles["box"]}>
      <p id={id} className={styles["label"]}>
        {label}
      </p>
      <div className={styles["row"]}>
        {corners.map(({ number, name }) => (
          <Button
            key={number}
            size="between"
            aria-label={["corner", number, name].filter((part) => part !== undefined).join(" ")}
            aria-pressed={chosen.includes(number)}
            className={styles["corner"]}
            onClick={() => onChange(toggledCorner(all, chosen, number))}
          >
            {number}
          </Button>
        ))}
      </div>
    </div>
  );
}
