import { useMemo } from "react";
import { runsToJudgeBy } from "#db";
import type { Id } from "#domain";
import { usePageBest, useRows } from "#live";
import { suggestNextRun } from "#words";
import { sessionFigures } from "../session/sessionFigures.ts";
import { type SessionData, useSession } from "../session/useSession.ts";
import { CornerNext } from "./CornerNext.tsx";
import styles from "./Lately.module.css";

/** What the last run of a session suggested to do next, the advice that its own page gives, and the corner to work on first. */
export function NextTime({ sessionId }: { readonly sessionId: Id }) {
  const data = useSession(sessionId);
  return data ? (
    <>
      <Advice data={data} />
      <CornerNext comboId={data.session.comboId} preferences={data.preferences} />
    </>
  ) : null;
}

function Advice({ data }: { readonly data: SessionData }) {
  const { session, preferences, page } = data;
  const { comboId, startedAt } = session;
  const pb = usePageBest(comboId, { from: page.from, to: startedAt }, session.id, preferences);
  const around = useRows(
    (book) => runsToJudgeBy(book, session, page),
    [session.id, comboId, startedAt, session.endedAt, page.from, page.to],
  );
  const suggestion = useMemo(() => {
    if (pb === undefined || around === undefined) return undefined;
    const { said, report } = sessionFigures(data, pb ?? undefined, undefined, around);
    return (
      said &&
      suggestNextRun(said.report, {
        session: report,
        cornersOfMistakes: said.corners,
        corners: data.layout.corners,
      }).suggestion
    );
  }, [data, pb, around]);
  if (suggestion === undefined) return null;
  return (
    <div>
      <p className={styles["soft"]}>To do next</p>
      <p>{suggestion}</p>
    </div>
  );
}
