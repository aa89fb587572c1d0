import { useEffect, useRef, useState } from "react";
import { databasesThere, eraseDatabases, LedgerFault } from "#db";
import { eraseDevice } from "#state/eraseDevice.ts";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import styles from "./App.module.css";

type Step =
  | { readonly kind: "erasing" | "blocked" | "gone" }
  | { readonly kind: "left"; readonly what: readonly string[] };

/** Erases everything, waits for a tab that holds it up, and says what is gone and what is not. */
export function Erasing() {
  const [step, setStep] = useState<Step>({ kind: "erasing" });
  const [attempt, setAttempt] = useState(1);
  const begun = useRef(0);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (begun.current === attempt) return;
    begun.current = attempt;
    heading.current?.focus();
    setStep({ kind: "erasing" });
    void eraseAll((isBlocked) => setStep({ kind: isBlocked ? "blocked" : "erasing" })).then((left) =>
      setStep(left.length === 0 ? { kind: "gone" } : { kind: "left", what: left }),
    );
  }, [attempt]);
  return (
    <main className={styles["main"]}>
      <h1 ref={heading} tabIndex={-1}>
        {step.kind === "gone" ? "Everything is erased" : "Erasing everything"}
      </h1>
      <div role="status">
        {step.kind === "erasing" && <p>Erasing what Lap Ledger kept in this browser</p>}
        {step.kind === "blocked" && (
          <Notice tone="caution">
            <p>
              <strong>Another tab of Lap Ledger is open and holds a logbook.</strong> Close it; erasing goes
              on by itself.
            </p>
          </Notice>
        )}
        {step.kind === "gone" && (
          <p>
            Nothing of Lap Ledger is left in this browser: no logbook, no typed text, no choices, no files for
            opening without a connection. Backup files you saved are where you put them. You can close this
            tab.
          </p>
        )}
      </div>
      {step.kind === "left" && (
        <div role="alert">
          <Notice tone="caution" actions={<Button onClick={() => setAttempt(attempt + 1)}>Try again</Button>}>
            <p>
              <strong>Not everything is gone.</strong> Left: {step.what.join(", ")}.
            </p>
          </Notice>
        </div>
      )}
      {step.kind === "gone" && (
        <p>
          <Button size="between" onClick={() => window.location.replace(window.location.pathname)}>
            Begin afresh
          </Button>
        </p>
      )}
    </main>
  );
}

/** Gives what could not be erased, in words. */
async function eraseAll(onBlocked: (isBlocked: boolean) => void): Promise<readonly string[]> {
  try {
    await eraseDatabases(onBlocked);
  } catch (error) {
    if (!(error instanceof LedgerFault)) throw error;
    return [error.message];
  }
  const left = await eraseDevice();
  const databases = await databasesThere();
  return databases.length === 0 ? left : [...left, `the databases ${databases.join(", ")}`];
}
