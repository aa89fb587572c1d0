import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import styles from "../start/StartForm.module.css";

interface IsItYoursProps {
  /** What the name may be meant for; undefined where there is nothing to ask. */
  readonly old: string | undefined;
  readonly onUse: (old: string) => void;
  readonly onNew: () => void;
}

/** Asks whether a typed name that differs from a known one in accents only is meant for it. */
export function IsItYours({ old, onUse, onNew }: IsItYoursProps) {
  return (
    <div className={old === undefined ? styles["unasked"] : styles["question"]}>
      <p role="status">
        {old !== undefined && (
          <>
            Is this your <Name>{old}</Name>?
          </>
        )}
      </p>
      {old !== undefined && (
        <div className={styles["answers"]}>
          <Button size="between" onClick={() => onUse(old)}>
            Use that
          </Button>
          <Button size="between" onClick={onNew}>
            Make a new one
          </Button>
        </div>
      )}
    </div>
  );
}
