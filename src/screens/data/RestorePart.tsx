import { useRef } from "react";
import { pickFile } from "#files";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { Incoming } from "./Incoming.tsx";
import { useLook } from "./useLook.ts";

/** From a chosen backup to a logbook of its own, into the open one, or in its place. */
export function RestorePart({ titles }: { readonly titles: readonly string[] }) {
  const looking = useLook();
  const { kind } = looking.step;
  const choose = useRef<HTMLButtonElement>(null);
  const read = async () => {
    const file = await pickFile(".json,.gz,.txt,application/json");
    if (file !== undefined) looking.look(file.name, file);
  };
  return (
    <Part title="Restore" ruled>
      {kind !== "seen" && (
        <p>
          A backup file becomes a logbook of its own, is merged into the open one, or takes its place. You see
          what is in it and what would change before anything is stored.
        </p>
      )}
      <Incoming looking={looking} titles={titles} first="new" onLeave={() => choose.current?.focus()} />
      <p>
        <Button ref={choose} size="between" disabled={kind === "reading"} onClick={() => void read()}>
          {kind === "seen" ? "Choose another file" : "Choose a backup file"}
        </Button>
      </p>
    </Part>
  );
}
