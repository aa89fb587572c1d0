import { useRef, useState } from "react";
import type { Problem } from "#domain";
import { pickFile } from "#files";
import { Button } from "#ui/Button.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import styles from "./Restore.module.css";
import { RestorePreview } from "./RestorePreview.tsx";
import { type ReadFile, readBackupFile } from "./readBackupFile.ts";

type Step =
  | { readonly kind: "waiting" }
  | { readonly kind: "reading"; readonly file: string }
  | { readonly kind: "refused"; readonly file: string; readonly problem: Problem }
  | { readonly kind: "preview"; readonly file: string; readonly read: ReadFile };

/** From a chosen file to a logbook of its own; what is open now is never written to. */
export function RestorePart({ titles }: { readonly titles: readonly string[] }) {
  const [step, setStep] = useState<Step>({ kind: "waiting" });
  const choose = useRef<HTMLButtonElement>(null);
  const read = async () => {
    const file = await pickFile(".json,.gz,application/json");
    if (file === undefined) return;
    setStep({ kind: "reading", file: file.name });
    const reading = await readBackupFile(file);
    setStep(
      reading.ok
        ? { kind: "preview", file: file.name, read: reading }
        : { kind: "refused", file: file.name, problem: reading.problem },
    );
  };
  const cancel = () => {
    setStep({ kind: "waiting" });
    choose.current?.focus();
  };
  return (
    <Part title="Restore" ruled>
      {step.kind === "preview" ? (
        <RestorePreview key={step.file} file={step.file} read={step.read} titles={titles} onCancel={cancel} />
      ) : (
        <p>
          A backup file becomes a logbook of its own, beside those you have. You see what is in it before
          anything is stored.
        </p>
      )}
      <div className={styles["step"]}>
        <div role="status">
          {step.kind === "reading" && (
            <p>
              Reading <Name>{step.file}</Name>
            </p>
          )}
        </div>
        <div role="alert">
          {step.kind === "refused" && (
            <Notice tone="caution">
              <p>
                <strong>
                  <Name>{step.file}</Name> was not restored.
                </strong>{" "}
                {sayProblem(step.problem)} Nothing was changed.
              </p>
            </Notice>
          )}
        </div>
        <Button ref={choose} size="between" disabled={step.kind === "reading"} onClick={() => void read()}>
          {step.kind === "preview" ? "Choose another file" : "Choose a backup file"}
        </Button>
      </div>
    </Part>
  );
}
