import { useState } from "react";
import type { Id, Run } from "#domain";
import type { EntryContext } from "#entry";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { PastePreview } from "./PastePreview.tsx";

interface PastedProps {
  readonly text: string;
  readonly context: EntryContext;
  readonly run: Run;
  readonly onDiscard: () => void;
  readonly onAdded: (laps: readonly Id[]) => void;
}

/** A pasted block: its preview, or, where the driver wants to decide later, a line that says it is waiting. */
export function Pasted({ text, context, run, onDiscard, onAdded }: PastedProps) {
  const [isShown, setShown] = useState(true);
  if (isShown)
    return (
      <PastePreview
        text={text}
        context={context}
        run={run}
        onLeave={() => setShown(false)}
        onDiscard={onDiscard}
        onAdded={onAdded}
      />
    );
  return (
    <Notice
      actions={
        <>
          <Button size="between" onClick={() => setShown(true)}>
            Look at it
          </Button>
          <Button size="between" onClick={onDiscard}>
            Discard
          </Button>
        </>
      }
    >
      <p>A pasted block is waiting.</p>
    </Notice>
  );
}
