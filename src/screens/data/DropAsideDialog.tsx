import { dropAside } from "#db";
import type { AsideRow } from "#domain";
import { useWrite } from "#live";
import { asideThing } from "#words";
import { TypedWordDialog } from "./TypedWordDialog.tsx";

/** Deleting a row that was set aside cannot be undone, so a word has to be typed. */
export function DropAsideDialog(props: { readonly aside: AsideRow; readonly onClose: () => void }) {
  const { aside, onClose } = props;
  const write = useWrite();
  const drop = () => {
    onClose();
    void write((book) => dropAside(book, aside));
  };
  return (
    <TypedWordDialog
      title="Delete for good"
      word="delete"
      keep="Keep it"
      act="Delete for good"
      notDone="The row was not deleted"
      onAct={drop}
      onClose={onClose}
    >
      <p>
        The <bdi>{asideThing(aside)}</bdi> will be gone from this logbook, and an older backup will not bring
        it back. This cannot be undone; save the rows as a file first if you may need it.
      </p>
    </TypedWordDialog>
  );
}
