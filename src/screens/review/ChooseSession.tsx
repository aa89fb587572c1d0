import type { Id } from "#domain";
import { firstOf, useComparing } from "#state/comparing.ts";
import { Button } from "#ui/Button.tsx";
import { CompareBar, CompareButton } from "#ui/Compare.tsx";
import styles from "./SessionList.module.css";

interface CompareSessionsProps {
  /** The rows of the list offer themselves. */
  readonly isChoosing: boolean;
  readonly onChoosing: (isChoosing: boolean) => void;
}

/** Above a list of sessions: asks for two of them, and says which was chosen first. */
export function CompareSessions({ isChoosing, onChoosing }: CompareSessionsProps) {
  const { first, forget } = useComparing();
  if (first !== undefined)
    return (
      <CompareBar
        {...first}
        onCancel={() => {
          forget();
          onChoosing(false);
        }}
      />
    );
  return (
    <div className={styles["compare"]}>
      <Button variant="quiet" aria-pressed={isChoosing} onClick={() => onChoosing(!isChoosing)}>
        {isChoosing ? "Choose the first of two sessions" : "Compare two sessions"}
      </Button>
    </div>
  );
}

interface ChooseSessionProps {
  readonly sessionId: Id;
  readonly name: string;
  readonly isChoosing: boolean;
}

/** Beside one session of a list: chooses it, once the driver wants to compare. */
export function ChooseSession({ sessionId, name, isChoosing }: ChooseSessionProps) {
  const { first, choose } = useComparing();
  const session = { kind: "session", id: sessionId, name } as const;
  const chosen = firstOf(first, session);
  if (!isChoosing && chosen === undefined) return null;
  return <CompareButton name={name} first={chosen} onChoose={() => choose(session)} />;
}
