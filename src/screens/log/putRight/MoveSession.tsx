import { combosWithNames, moveSessionToCombo } from "#db";
import { comboName } from "#domain";
import { useRows, useWrite } from "#live";
import type { SessionData } from "../session/useSession.ts";
import { PickAndDo } from "./PickAndDo.tsx";

/** The wrong combo was chosen: the session and its runs go to another. */
export function MoveSession({ data, onMoved }: { readonly data: SessionData; readonly onMoved: () => void }) {
  const write = useWrite();
  const combos = useRows((book) => combosWithNames(book), []) ?? [];
  const move = async (comboId: string) => {
    const { id: sessionId } = data.session;
    if (await write((book) => moveSessionToCombo(book, { sessionId, comboId }), { isUndoOffered: true }))
      onMoved();
  };
  return (
    <PickAndDo
      label="Move the whole session to"
      prompt="choose a combo"
      none="there is no other combo yet"
      options={combos
        .filter(({ combo }) => combo.id !== data.combo.id)
        .map((other) => ({ value: other.combo.id, label: comboName(other) }))}
      deed="Move"
      onDo={move}
    />
  );
}
