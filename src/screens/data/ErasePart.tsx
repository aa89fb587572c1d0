import { useState } from "react";
import type { ShelvedLogbook } from "#db";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { EraseDialog } from "./EraseDialog.tsx";

/** Erases all logbooks and everything else the app keeps in this browser. */
export function ErasePart({ logbooks }: { readonly logbooks: readonly ShelvedLogbook[] }) {
  const [isAsking, setAsking] = useState(false);
  return (
    <Part title="Erase everything" ruled>
      <p>
        All logbooks, typed text and choices of this browser, and the files kept for opening without a
        connection. To remove one logbook only, use Remove beside its name.
      </p>
      <div>
        <Button size="between" variant="caution" onClick={() => setAsking(true)}>
          Erase everything
        </Button>
      </div>
      {isAsking && <EraseDialog logbooks={logbooks} onClose={() => setAsking(false)} />}
    </Part>
  );
}
