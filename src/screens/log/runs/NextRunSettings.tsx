import { editRun, type RunPatch } from "#db";
import type { Run } from "#domain";
import { useWrite } from "#live";
import { Choice } from "#ui/Choice.tsx";
import styles from "./NextRunSettings.module.css";
import { asOptions, effortWords, kindWords, surfaceOptions } from "./runWords.ts";

/** Before the first lap: what most often changes from run to run, one tap each. All else is behind "Change". */
export function NextRunSettings({ run }: { readonly run: Run }) {
  const write = useWrite();
  const change = (patch: RunPatch) => void write((book) => editRun(book, { runId: run.id, patch }));
  return (
    <div className={styles["lines"]}>
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
