import { useState } from "react";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { DeletedList } from "./DeletedList.tsx";

/** What was deleted and can be brought back. The list is read when asked for: it looks through every run. */
export function DeletedPart() {
  const [isShown, setShown] = useState(false);
  return (
    <Part title="Deleted" ruled>
      <p>
        What you delete can be brought back until this logbook has been opened on 30 more days; then it is
        gone for good.
      </p>
      <div>
        <Button size="between" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
          {isShown ? "Hide what was deleted" : "Show what was deleted"}
        </Button>
      </div>
      {isShown && <DeletedList />}
    </Part>
  );
}
