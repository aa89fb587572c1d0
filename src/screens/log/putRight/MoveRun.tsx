import { moveRunToCombo, moveRunToSession, sessionsOfCombo } from "#db";
import { type Run, sayDate } from "#domain";
import { useRows, useWrite } from "#live";
import { goTo } from "#state/address.ts";
import type { SessionData } from "../session/useSession.ts";
import { PickAndDo } from "./PickAndDo.tsx";
import { ToCombo } from "./ToCombo.tsx";

const shown = 30;

/** Moves a run to another session of the combo, or to another combo on the same date, which may be a new one. */
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
  const others = sessions
    .filter(({ id }) => id !== session.id)
    .slice(-shown)
    .reverse();
  const toSession = async (sessionId: string) => {
    if (await write((book) => moveRunToSession(book, { runId: run.id, sessionId }), { isUndoOffered: true }))
      onMoved();
  };
  return (
    <>
      <PickAndDo
        label="Move this run to another session of this combo"
        prompt="choose a session"
        none="this combo has no other session"
        options={others.map((other) => ({ value: other.id, label: sayDate(other.date) }))}
        deed="Move"
        onDo={toSession}
      />
      <div>
        <p>Or to another combo, same date:</p>
        <ToCombo
          from={combo.id}
          deed="Move the run"
          move={(book, to) => moveRunToCombo(book, { runId: run.id, ...to })}
          onMoved={({ sessionId }) => {
            onMoved();
            if (data.runs.length === 1) goTo({ place: "log", sessionId });
          }}
        />
      </div>
    </>
  );
}
