import { Button } from "#ui/Button.tsx";
import styles from "./Pad.module.css";
import { PadSign } from "./PadSign.tsx";

interface PadToolsProps {
  /** Empties the line; absent while it is empty. */
  readonly onClear: (() => void) | undefined;
  /** Brings back what stood in the empty line; absent where nothing did. */
  readonly onBringBack?: (() => void) | undefined;
  readonly onHide: () => void;
}

/** The keys beside the line: to clear it, or to bring back what stood there, and to hide the pad. */
export function PadTools({ onClear, onBringBack, onHide }: PadToolsProps) {
  const isBack = onClear === undefined && onBringBack !== undefined;
  return (
    <div className={styles["tools"]}>
      <Button
        size="between"
        aria-label={isBack ? "bring back" : "clear"}
        disabled={!isBack && onClear === undefined}
        onPointerDown={(event) => event.preventDefault()}
        onClick={isBack ? onBringBack : onClear}
      >
        <PadSign of={isBack ? "back" : "clear"} />
      </Button>
      <Button
        size="between"
        aria-label="hide the keys"
        onPointerDown={(event) => event.preventDefault()}
        onClick={onHide}
      >
        <PadSign of="hide" />
      </Button>
    </div>
  );
}
