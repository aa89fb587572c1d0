import { splitSession } from "#db";
import type { Run } from "#domain";
import { useWrite } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import type { SessionData } from "./useSession.ts";

interface SplitSessionProps {
  readonly data: SessionData;
  readonly run: Run;
  readonly number: number;
  readonly onSplit: () => void;
}

/** This run and those after it become a session of their own. An open session goes on as the second one. */
export function SplitSession({ data, run, number, onSplit }: SplitSessionProps) {
  const write = useWrite();
  const { session } = data;
  const split = async () => {
    const change = await write((book) => splitSession(book, { sessionId: session.id, fromRunId: run.id }), {
      isUndoOffered: true,
    });
    if (change === undefined) return;
    onSplit();
    if (session.endedAt === undefined && "sessionId" in change)
      goTo({ place: "log", sessionId: String(change.sessionId) }, "replace");
  };
  return (
    <>
      <p>Run {number} and those after it become a session of their own, on the same date.</p>
      <Button size="between" onClick={split}>
        Split the session here
      </Button>
    </>
  );
}
