import { Button } from "#ui/Button.tsx";
import { testPutOff } from "#words";
import styles from "./RigTestPanel.module.css";

/** What is left of a rig test on an evening that goes without it: a line, and the way back. */
export function RigTestPutOff({ onTakeUp }: { readonly onTakeUp: () => void }) {
  return (
    <section aria-label="Rig test" className={styles["putOff"]}>
      <p className={styles["second"]}>{testPutOff}</p>
      <Button size="between" variant="quiet" onClick={onTakeUp}>
        Drive it after all
      </Button>
    </section>
  );
}
