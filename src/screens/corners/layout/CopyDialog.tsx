import { useState } from "react";
import { type CopyHow, combosWithNames, copyCorners } from "#db";
import { fillCorners, type Id, type Layout, layoutName } from "#domain";
import { useRows, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Select } from "#ui/Select.tsx";
import { asSentence, counted } from "#words";
import styles from "./Layout.module.css";

interface CopyDialogProps {
  readonly layout: Layout;
  readonly onClose: () => void;
}

const ways = [
  { value: "fill", label: "only where nothing is known here" },
  { value: "replace", label: "in place of all that is here" },
] as const;

/** Takes over the corners of another layout, of this track or any other. */
export function CopyDialog({ layout, onClose }: CopyDialogProps) {
  const write = useWrite();
  const others = useRows((book) => otherLayouts(book, layout.id), [layout.id]);
  const [chosen, setChosen] = useState<Id>();
  const [how, setHow] = useState<CopyHow>("fill");
  const from = others?.find(({ id }) => id === chosen) ?? others?.[0];
  const copy = async () => {
    if (from === undefined) return;
    const way = layout.corners.length === 0 ? "replace" : how;
    const done = await write(
      (book) => copyCorners(book, { fromId: from.id, layoutId: layout.id, how: way }),
      {
        isUndoOffered: true,
      },
    );
    if (done) onClose();
  };
  return (
    <Dialog
      title="Corners of another layout"
      onClose={onClose}
      actions={
        <ButtonRow
          others={
            <Button size="between" onClick={onClose}>
              Cancel
            </Button>
          }
          main={
            from && (
              <Button size="between" variant="primary" onClick={() => void copy()}>
                Copy {counted(from.corners.length, "corner")}
              </Button>
            )
          }
        />
      }
    >
      {others !== undefined &&
        (from === undefined ? (
          <p>No other layout has corners yet.</p>
        ) : (
          <div className={styles["pasted"]}>
            <Select
              label="From"
              value={from.id}
              options={others.map(({ id, name, corners }) => ({
                value: id,
                label: `${name}: ${counted(corners.length, "corner")}`,
              }))}
              onChange={setChosen}
            />
            {layout.corners.length > 0 && (
              <Choice label="Take them over" options={ways} value={how} onChange={setHow} size="between" />
            )}
            <p aria-live="polite">{sayCopy(layout, from, how)}</p>
          </div>
        ))}
    </Dialog>
  );
}

interface NamedLayout extends Pick<Layout, "id" | "corners"> {
  readonly name: string;
}

async function otherLayouts(book: Parameters<typeof combosWithNames>[0], except: Id): Promise<NamedLayout[]> {
  const layouts = new Map<Id, NamedLayout>();
  for (const { layout, track } of await combosWithNames(book))
    if (layout.id !== except && layout.corners.length > 0)
      layouts.set(layout.id, { id: layout.id, corners: layout.corners, name: layoutName(track, layout) });
  return [...layouts.values()].sort((a, b) => a.name.localeCompare(b.name, "en"));
}

/** What copying will do to the corners here. */
function sayCopy({ corners }: Pick<Layout, "corners">, from: NamedLayout, how: CopyHow): string {
  const all = counted(from.corners.length, "corner");
  if (corners.length === 0) return `${all} will stand here.`;
  if (how === "replace")
    return `${all} will stand in place of the ${corners.length} here. Undo brings them back.`;
  const added = fillCorners(corners, from.corners).length - corners.length;
  const both = from.corners.length - added;
  const parts = [
    ...(added > 0 ? [`${counted(added, "corner")} will be added`] : []),
    ...(both > 0
      ? [`what is not known of ${both === 1 ? "one" : both} that both have will be filled in`]
      : []),
  ];
  return `${asSentence(parts.join(", and "))}. Nothing known here is changed.`;
}
