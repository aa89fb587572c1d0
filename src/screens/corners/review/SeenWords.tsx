import { useId } from "react";
import { type SeenCorner, type SeenSign, seenSigns } from "#entry";
import { Button } from "#ui/Button.tsx";
import styles from "./Review.module.css";

interface SeenWordsProps {
  readonly seen: SeenCorner;
  readonly onSeen: (seen: SeenCorner) => void;
  /** The line cannot be read: nothing can be said until it can. */
  readonly isHeld: boolean;
}

const groups = [
  { of: "braking", label: "Braking" },
  { of: "throttle", label: "Throttle" },
  { of: "isOffLine", label: "Line" },
] as const;

/** Braking, throttle and line in words, each a button; pressed again, nothing is said of it. */
export function SeenWords({ seen, onSeen, isHeld }: SeenWordsProps) {
  const id = useId();
  return (
    <div className={styles["words"]}>
      {groups.map(({ of, label }) => (
        // biome-ignore lint/a11y/useSemanticElements: the label stands beside its buttons, which a legend cannot
        <div key={of} role="group" aria-labelledby={`${id}-${of}`} className={styles["group"]}>
          <span id={`${id}-${of}`} className={styles["label"]}>
            {label}
          </span>
          {seenSigns
            .filter(({ says }) => of in says)
            .map((sign) => (
              <Button
                key={sign.letters}
                size="between"
                disabled={isHeld}
                aria-pressed={isSaid(seen, sign)}
                className={styles["word"]}
                onClick={() => onSeen(toggled(seen, sign))}
              >
                {of === "isOffLine" ? sign.words : sign.words.split(" ")[1]}
              </Button>
            ))}
        </div>
      ))}
    </div>
  );
}

function isSaid(seen: SeenCorner, { says }: SeenSign): boolean {
  return Object.entries(says).every(([of, value]) => seen[of as keyof SeenCorner] === value);
}

function toggled(seen: SeenCorner, sign: SeenSign): SeenCorner {
  const others = Object.fromEntries(Object.entries(seen).filter(([of]) => !(of in sign.says)));
  return isSaid(seen, sign) ? others : { ...others, ...sign.says };
}
