import { useForm, useTyped } from "#live";
import { Field } from "#ui/Field.tsx";
import { BadRows } from "./BadRows.tsx";
import { HoldsTable } from "./HoldsTable.tsx";
import styles from "./Restore.module.css";
import { freeTitle, readTitle } from "./titles.ts";
import { WayButtons } from "./WayButtons.tsx";
import { type WayProps, withoutBad } from "./wayProps.ts";

/** A backup becomes a logbook of its own. */
export function NewWay(props: WayProps & { readonly titles: readonly string[] }) {
  const { file, incoming, onLeave, titles } = props;
  const { preview, source } = file;
  const typed = useTyped({ title: freeTitle(preview.title, titles) });
  const { box, field, submit } = useForm({
    typed,
    reading: readTitle(typed.value.title),
    onRead: async (title) => {
      await incoming.asNew(source, { title, kind: "own" });
    },
  });
  return (
    <form ref={box} className={styles["preview"]} onSubmit={submit}>
      <HoldsTable holds={preview.holds} />
      {preview.bad.all > 0 && <BadRows bad={preview.bad} />}
      <Field
        label="Name of the restored logbook"
        {...field("title")}
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
