import { editRun, type RunPatch } from "#db";
import type { Run } from "#domain";
import { useWrite } from "#live";
import { Choice } from "#ui/Choice.tsx";
import { Name } from "#ui/Name.tsx";
import { effortWords, kindWords } from "#words";
import styles from "./NextRunSettings.module.css";
import { asOptions, sayAgainAtPace, surfaceOptions } from "./runWords.ts";

interface NextRunSettingsProps {
  readonly run: Run;
  /** The run before it on the page. */
  readonly before: { readonly run: Run; readonly number: number } | undefined;
}

/**
 * Before the first lap: what most often changes from run to run, one tap each, and what went back by itself. All else is
 * behind "Change".
 */
export function NextRunSettings({ run, before }: NextRunSettingsProps) {
  const write = useWrite();
  const change = (patch: RunPatch) => void write((book) => editRun(book, { runId: run.id, patch }));
  const again = sayAgainAtPace(run, before);
  return (
    <div className={styles["lines"]}>
      {again !== undefined && (
        <p className={styles["again"]}>
          <Name>{again}</Name>
        </p>
      )}
      <Choice
        label="Kind"
        labelHidden
        size="between"
        value={run.kind}
        options={asOptions(kindWords)}
        onChange={(kind) => change({ kind })}
      />
      <Choice
        label="Effort"
        labelHidden
        size="between"
        value={run.effort}
        options={asOptions(effortWords)}
        onChange={(effort) => change({ effort })}
      />
      <Choice
        label="Surface"
        labelHidden
        size="between"
        value={run.surface}
        options={surfaceOptions}
        onChange={(surface) => change({ surface })}
      />
    </div>
  );
}
