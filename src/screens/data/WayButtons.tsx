import type { useIncoming } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { ProgressBar } from "#ui/ProgressBar.tsx";
import styles from "./Restore.module.css";

interface WayButtonsProps {
  readonly incoming: ReturnType<typeof useIncoming>;
  /** What the button does. */
  readonly act: string;
  /** What goes on, while it goes on. */
  readonly doing: string;
  readonly variant?: "primary" | "caution";
  readonly onCancel: () => void;
}

/** The button that begins, inside a form; how far it is; and the way out, before and during. */
export function WayButtons({ incoming, act, doing, variant = "primary", onCancel }: WayButtonsProps) {
  const { progress, stop } = incoming;
  if (progress === undefined)
    return (
      <ButtonRow
        others={
          <Button size="between" onClick={onCancel}>
            Cancel
          </Button>
        }
        main={
          <Button type="submit" variant={variant} size="between">
            {act}
          </Button>
        }
      />
    );
  return (
    <>
      <ProgressBar label={doing} share={progress.share ?? 0} text={progress.step} />
      <div className={styles["buttons"]}>
        <Button size="between" onClick={stop}>
          Stop
        </Button>
      </div>
    </>
  );
}
