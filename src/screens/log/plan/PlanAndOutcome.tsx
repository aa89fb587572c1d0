import { OutcomeRows } from "#ui/OutcomeRows.tsx";
import { Part } from "#ui/Part.tsx";
import { outcomeRows } from "#words";
import type { SessionData } from "../session/useSession.ts";

/** An ended session's plan beside what came of it. */
export function PlanAndOutcome({ data: { session, runs, preferences } }: { readonly data: SessionData }) {
  return (
    <Part title="Plan and outcome" ruled>
      <OutcomeRows label="Plan and outcome" rows={outcomeRows(session.plan ?? [], runs, preferences)} />
    </Part>
  );
}
