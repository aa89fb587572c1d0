import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { SessionDate } from "./SessionDate.tsx";
import type { SessionData } from "./useSession.ts";

interface DateDialogProps {
  readonly data: SessionData;
  readonly onClose: () => void;
}

/** The date of a session, and nothing else of it. */
export function DateDialog({ data, onClose }: DateDialogProps) {
  return (
    <Dialog
      title="Date of this session"
      onClose={onClose}
      actions={
        <ButtonRow
          main={
            <Button size="between" variant="primary" onClick={onClose}>
              Done
            </Button>
          }
        />
      }
    >
      <SessionDate data={data} />
    </Dialog>
  );
}
