import { useState } from "react";
import type { Id } from "#domain";
import type { EntryContext } from "#entry";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { PastePreview } from "./PastePreview.tsx";
import type { PastePlace } from "./pastePlaces.ts";

interface PastedProps {
  readonly text: string;
  readonly context: EntryContext;
  /** Where the laps can go, the likeliest first. */
  readonly places: readonly PastePlace[];
  readonly onDiscard: () => void;
  readonly onAdded: (laps: readonly Id[]) => void;
}

/** A pasted block: its preview, or, where the driver wants to decide later, a line that says it is waiting. */
export function Pasted({ text, context, places, onDiscard, onAdded }: PastedProps) {
  const [isShown, setShown] = useState(true);
  if (isShown)
    return (
      <PastePreview
        text={text}
        context={context}
        places={places}
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
