import { useState } from "react";
import { splitRun } from "#db";
import type { Id, Run } from "#domain";
import { useWrite } from "#live";
import { longGap } from "#stats";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { askLongGap } from "#words";

interface ForgottenEndProps {
  /** The run being driven. */
  readonly run: Run;
  /** The laps typed here as they were driven, in order. */
  readonly driven: readonly Id[];
  readonly usualMs: number | undefined;
}

/** A lap typed long after the one before it: perhaps the end of the run was forgotten. Asked once, and never in the way. */
export function ForgottenEnd({ run, driven, usualMs }: ForgottenEndProps) {
  const write = useWrite();
  const [answered, setAnswered] = useState<readonly Id[]>([]);
  const lapId = driven.findLast((id) => longGap(run, id, usualMs) !== undefined);
  const gap = lapId === undefined ? undefined : longGap(run, lapId, usualMs);
  if (lapId === undefined || gap === undefined || answered.includes(lapId)) return null;
  const answer = () => setAnswered([...answered, lapId]);
  return (
    <div role="status">
      <Notice
        actions={
          <>
            <Button
              size="between"
              onClick={() => {
                answer();
                void write((book) => splitRun(book, { runId: run.id, lapId }), { isUndoOffered: true });
              }}
            >
              Begin a new run here
            </Button>
            <Button size="between" onClick={answer}>
              Same run
            </Button>
          </>
        }
      >
        <p>{askLongGap(gap)}</p>
      </Notice>
    </div>
  );
}
