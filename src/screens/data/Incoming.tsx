import { Button } from "#ui/Button.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { IncomingPreview, type Way } from "./IncomingPreview.tsx";
import styles from "./Restore.module.css";
import type { Looking } from "./useLook.ts";

interface IncomingProps {
  readonly looking: Looking;
  /** Titles of the logbooks that are there. */
  readonly titles: readonly string[];
  /** The way offered first. */
  readonly first: Way;
  /** Called when the driver cancels, and when the file is in. */
  readonly onLeave: () => void;
}

/** What becomes of a file that comes in: it is read, refused with the reason, or shown before anything is stored. */
export function Incoming({ looking, titles, first, onLeave }: IncomingProps) {
  const { step, progress, clear } = looking;
  const leave = () => {
    clear();
    onLeave();
  };
  return (
    <div className={styles["incoming"]}>
      <div role="status">
        {step.kind === "reading" && (
          <p>
            <Name>{step.name}</Name>: {(progress?.step ?? "Reading the file").toLowerCase()}
          </p>
        )}
      </div>
      {step.kind === "reading" && (
        <p>
          <Button size="between" onClick={leave}>
            Stop
          </Button>
        </p>
      )}
      <div role="alert">
        {step.kind === "refused" && (
          <Notice tone="caution">
            <p>
              <strong>
                <Name>{step.name}</Name> was not restored.
              </strong>{" "}
              {sayProblem(step.problem)} Nothing was changed.
            </p>
          </Notice>
        )}
      </div>
      {step.kind === "seen" && (
        <IncomingPreview file={step.file} titles={titles} first={first} onLeave={leave} />
      )}
    </div>
  );
}
