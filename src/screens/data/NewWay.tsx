import { useState } from "react";
import { Field } from "#ui/Field.tsx";
import { BadRows } from "./BadRows.tsx";
import { HoldsTable } from "./HoldsTable.tsx";
import styles from "./Restore.module.css";
import { freeTitle, wrongTitle } from "./titles.ts";
import { WayButtons } from "./WayButtons.tsx";
import { type WayProps, withoutBad } from "./wayProps.ts";

/** A backup becomes a logbook of its own. */
export function NewWay(props: WayProps & { readonly titles: readonly string[] }) {
  const { file, incoming, onLeave, titles } = props;
  const { preview, source } = file;
  const [title, setTitle] = useState(() => freeTitle(preview.title, titles));
  const problem = wrongTitle(title);
  return (
    <form
      className={styles["preview"]}
      onSubmit={(event) => {
        event.preventDefault();
        if (problem === undefined) void incoming.asNew(source, { title: title.trim(), kind: "own" });
      }}
    >
      <HoldsTable holds={preview.holds} />
      {preview.bad.all > 0 && <BadRows bad={preview.bad} />}
      <Field
        label="Name of the restored logbook"
        value={title}
        onChange={setTitle}
        problem={problem}
        disabled={incoming.progress !== undefined}
        size="between"
      />
      <WayButtons
        incoming={incoming}
        act={withoutBad("Restore", "Restore as a new logbook", preview.bad.all)}
        doing="Restoring"
        onCancel={onLeave}
      />
    </form>
  );
}
