import { Notice } from "#ui/Notice.tsx";
import { BadRows } from "./BadRows.tsx";
import { HoldsTable } from "./HoldsTable.tsx";
import styles from "./Restore.module.css";
import { WayButtons } from "./WayButtons.tsx";
import { type WayProps, withoutBad } from "./wayProps.ts";

/** A backup takes the place of the open logbook. */
export function ReplaceWay({ file, incoming, onLeave }: WayProps) {
  const { preview, source } = file;
  return (
    <form
      className={styles["preview"]}
      onSubmit={(event) => {
        event.preventDefault();
        void incoming.replace(source);
      }}
    >
      <HoldsTable holds={preview.holds} />
      {preview.bad.all > 0 && <BadRows bad={preview.bad} />}
      <Notice tone="caution">
        <p>
          What the open logbook holds and this file does not will no longer be in it. To keep both, merge.
        </p>
      </Notice>
      <WayButtons
        incoming={incoming}
        act={withoutBad("Replace", "Replace the open logbook", preview.bad.all)}
        doing="Replacing"
        variant="caution"
        onCancel={onLeave}
      />
    </form>
  );
}
