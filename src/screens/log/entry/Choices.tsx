import type { KeyboardEvent } from "react";
import { Button } from "#ui/Button.tsx";
import styles from "./Choices.module.css";

interface ChoicesProps {
  readonly choices: readonly string[];
  readonly onChoose: (choice: string, at: number) => void;
  /** Back to the field. */
  readonly onLeave: () => void;
}

/** Marks the first choice: the arrow down goes to it from the field. */
export const firstChoice = "[data-first-choice]";

/** What an unclear time may have been, as buttons. The arrows go between them and back to the field. */
export function Choices({ choices, onChoose, onLeave }: ChoicesProps) {
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    const buttons = [...event.currentTarget.querySelectorAll("button")];
    const place = buttons.indexOf(document.activeElement as HTMLButtonElement);
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (step === undefined && event.key !== "Escape") return;
    event.preventDefault();
    const next = step === undefined ? undefined : buttons[place + step];
    if (next !== undefined) next.focus();
    else if (step !== 1) onLeave();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would have its own legend above the field's
    <div
      role="group"
      aria-label="Which was it?"
      className={styles["choices"]}
      data-a-row
      onKeyDown={onKeyDown}
    >
      {choices.map((choice, place) => (
        <Button
          key={choice}
          size="between"
          data-first-choice={place === 0 || undefined}
          onClick={({ timeStamp }) => onChoose(choice, timeStamp)}
        >
          {choice}
        </Button>
      ))}
    </div>
  );
}
