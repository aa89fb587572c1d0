import { useId, useState } from "react";
import { practiceDay, sayDate } from "#domain";
import { useLogbook, useRestore } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { Name } from "#ui/Name.tsx";
import { ProgressBar } from "#ui/ProgressBar.tsx";
import { type Column, RuledTable } from "#ui/RuledTable.tsx";
import { BadRows } from "./BadRows.tsx";
import { backupRows } from "./backupRows.ts";
import styles from "./Restore.module.css";
import type { ReadFile } from "./readBackupFile.ts";
import { freeTitle, wrongTitle } from "./titles.ts";

interface RestorePreviewProps {
  readonly file: string;
  readonly read: ReadFile;
  /** Titles of the logbooks that are there. */
  readonly titles: readonly string[];
  readonly onCancel: () => void;
}

const columns: readonly Column[] = [
  { key: "what", title: "in the file" },
  { key: "rows", title: "number", figures: true },
  { key: "deleted", title: "and deleted", figures: true },
];

/** What a backup holds, before any of it is stored; then its way into a new logbook. */
export function RestorePreview({ file, read, titles, onCancel }: RestorePreviewProps) {
  const { backup, checked } = read;
  const { surroundings } = useLogbook();
  const { progress, restore, cancel } = useRestore();
  const [title, setTitle] = useState(() => freeTitle(backup.title, titles));
  const problem = wrongTitle(title);
  const formId = useId();
  const rows = backupRows(checked.rows);
  const bad = checked.bad.length;
  const begin = () => {
    if (problem === undefined) void restore({ title: title.trim(), kind: "own", rows: checked.rows });
  };
  return (
    <form
      id={formId}
      className={styles["preview"]}
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      <p>
        <Name>{file}</Name>: a backup of <Name>{backup.title}</Name>
        {backup.madeAt > 0 && `, last changed ${sayDate(practiceDay(backup.madeAt, surroundings.zone(), 0))}`}
        .{" "}
        {backup.isVerified
          ? "It is whole: its numbers of rows and its checksum fit."
          : "Its numbers of rows fit; its checksum could not be compared here."}
      </p>
      {rows.length === 0 ? (
        <p>There is no row in it.</p>
      ) : (
        <RuledTable caption="What the backup holds" captionHidden columns={columns} rows={rows} />
      )}
      {bad > 0 && <BadRows bad={checked.bad} />}
      <Field
        label="Name of the restored logbook"
        value={title}
        onChange={setTitle}
        problem={problem}
        disabled={progress !== undefined}
        size="between"
      />
      {progress === undefined ? (
        <div className={styles["buttons"]}>
          <Button type="submit" variant="primary" size="between">
            {bad === 0
              ? "Restore as a new logbook"
              : `Restore without ${bad === 1 ? "this row" : `these ${bad} rows`}`}
          </Button>
          <Button size="between" onClick={onCancel}>
            Cancel
          </Button>
        </div>
      ) : (
        <>
          <ProgressBar
            label="Restoring"
            share={progress.done / Math.max(1, progress.all)}
            text={`${progress.done} of ${progress.all} rows stored`}
          />
          <div className={styles["buttons"]}>
            <Button size="between" onClick={cancel}>
              Stop restoring
            </Button>
          </div>
        </>
      )}
    </form>
  );
}
