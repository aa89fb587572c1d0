import { useState } from "react";
import type { ShelvedLogbook } from "#db";
import { saveBackup, useLogbook, useRemoveLogbook } from "#live";
import { useDevice } from "#state/device.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { TypedWordDialog } from "./TypedWordDialog.tsx";

/** Removing a logbook cannot be undone: a backup is offered first, and a word has to be typed. */
export function RemoveDialog(props: { readonly logbook: ShelvedLogbook; readonly onClose: () => void }) {
  const { logbook, onClose } = props;
  const open = useLogbook();
  const remove = useRemoveLogbook();
  const sessions = useDevice(({ markers }) => markers[logbook.name]?.sessions ?? 0);
  const [isSaved, setSaved] = useState(false);
  return (
    <TypedWordDialog
      title="Remove a logbook"
      word="remove"
      keep="Keep it"
      act="Remove for good"
      notDone="The logbook was not removed"
      between={
        logbook.openedOn.length > 0 && (
          <Button size="between" onClick={() => void saveBackup(open, logbook).then(setSaved)}>
            {isSaved ? "Save the backup again" : "Save a backup first"}
          </Button>
        )
      }
      onAct={() => {
        onClose();
        void remove(logbook);
      }}
      onClose={onClose}
    >
      <p>
        <Name>{logbook.title}</Name>
        {sessions > 0 && ` with its ${sessions} ${sessions === 1 ? "session" : "sessions"}`} will be gone from
        this browser. This cannot be undone; a backup can bring it back.
      </p>
    </TypedWordDialog>
  );
}
