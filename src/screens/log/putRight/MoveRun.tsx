import { combosWithNames, moveRunToCombo, moveRunToSession, sessionsOfCombo } from "#db";
import { comboName, type Run, sayDate } from "#domain";
import { useRows, useWrite } from "#live";
import { goTo } from "#state/address.ts";
import type { SessionData } from "../session/useSession.ts";
import { PickAndDo } from "./PickAndDo.tsx";

const shown = 30;

/** Moves a run to another session of the combo, or to another combo on the same date. */
export function MoveRun({
  data,
  run,
  onMoved,
}: {
  readonly data: SessionData;
  readonly run: Run;
  readonly onMoved: () => void;
}) {
  const write = useWrite();
  const { session, combo } = data;
  const sessions = useRows((book) => sessionsOfCombo(book, combo.id), [combo.id]) ?? [];
  const combos = useRows((book) => combosWithNames(book), []) ?? [];
  const others = sessions
    .filter(({ id }) => id !== session.id)
    .slice(-shown)
    .reverse();
  const toSession = async (sessionId: string) => {
    if (await write((book) => moveRunToSession(book, { runId: run.id, sessionId }), { isUndoOffered: true }))
      onMoved();
  };
  const toCombo = async (comboId: string) => {
    const change = await write((book) => moveRunToCombo(book, { runId: run.id, comboId }), {
      isUndoOffered: true,
    });
    if (change) {
      onMoved();
      if (data.runs.length === 1 && "sessionId" in change)
        goTo({ place: "log", sessionId: String(change.sessionId) });
    }
  };
  return (
    <>
      <PickAndDo
        label="Move this run to another session of this combo"
        prompt="choose a session"
        none="there is no other"
        options={others.map((other) => ({ value: other.id, label: sayDate(other.date) }))}
        deed="Move"
        onDo={toSession}
      />
      <PickAndDo
        label="Move this run to another combo, same date"
        prompt="choose a combo"
        none="there is no other"
        options={combos
          .filter((other) => other.combo.id !== combo.id)
          .map((other) => ({ value: other.combo.id, label: comboName(other) }))}
        deed="Move"
        onDo={toCombo}
      />
    </>
  );
}
