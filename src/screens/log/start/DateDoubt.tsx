import { Notice } from "#ui/Notice.tsx";
import styles from "./StartForm.module.css";

/** What is asked about the date that a session would have; nothing where it is not in doubt. */
export function DateDoubt({ question }: { readonly question: string | undefined }) {
  return (
    <div role="status" className={styles["asked"]}>
      {question !== undefined && (
        <Notice>
          <p>{question}</p>
        </Notice>
      )}
    </div>
  );
}
