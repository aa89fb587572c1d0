import { useState } from "react";
import { Button } from "#ui/Button.tsx";
import { type Option, Select } from "#ui/Select.tsx";
import styles from "./PickAndDo.module.css";

interface PickAndDoProps {
  readonly label: string;
  /** The first line of the list while nothing is chosen: "choose a combo". */
  readonly prompt: string;
  /** Said instead of the list when there is nothing to choose from. */
  readonly none: string;
  readonly options: readonly Option[];
  /** What the button says. */
  readonly deed: string;
  /** False while something else is missing. */
  readonly isReady?: boolean;
  readonly onDo: (value: string) => void;
}

/** A list and the button that acts on what is chosen: arrow keys in the list alone change nothing. */
export function PickAndDo({ label, prompt, none, options, deed, isReady = true, onDo }: PickAndDoProps) {
  const [value, setValue] = useState("");
  const chosen = options.some((option) => option.value === value) ? value : "";
  if (options.length === 0)
    return (
      <p className={styles["none"]}>
        {label}: {none}.
      </p>
    );
  return (
    <div className={styles["line"]}>
      <div className={styles["list"]}>
        <Select
          label={label}
          value={chosen}
          onChange={setValue}
          options={[{ value: "", label: prompt }, ...options]}
        />
      </div>
      <Button size="between" disabled={chosen === "" || !isReady} onClick={() => onDo(chosen)}>
        {deed}
      </Button>
    </div>
  );
}
