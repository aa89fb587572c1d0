import { useState } from "react";
import { splitSession } from "#db";
import { lapsInOrder, type Run } from "#domain";
import { useWrite } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { lapNumber } from "../laps/lapSpan.ts";
import type { SessionData } from "../session/useSession.ts";

interface SplitSessionProps {
  readonly data: SessionData;
  readonly run: Run;
  readonly number: number;
  readonly onSplit: () => void;
}

/**
 * This run, or its laps from one on, and the runs after it become a session of their own. An open session goes on as
 * the second one.
 */
export function SplitSession({ data, run, number, onSplit }: SplitSessionProps) {
  const write = useWrite();
  const { session } = data;
  const [typed, setTyped] = useState("");
  const laps = lapsInOrder(run);
  const isFirst = number === 1;
  if (isFirst && laps.length < 2) return null;
  const lowest = isFirst ? 2 : 1;
  const isEmpty = typed.trim() === "";
  const lap = lapNumber(typed, laps.length);
  const isRight = isEmpty ? !isFirst : lap !== undefined && lap >= lowest;
  const wrong = isFirst
    ? `Write a lap from 2 to ${laps.length}.`
    : `Write a lap from 1 to ${laps.length}, or leave it empty.`;
  const split = async () => {
    const fromLapId = lap === undefined ? undefined : laps[lap - 1]?.id;
    const from = { sessionId: session.id, fromRunId: run.id, ...(fromLapId !== undefined && { fromLapId }) };
    const change = await write((book) => splitSession(book, from), { isUndoOffered: true });
    if (change === undefined) return;
    onSplit();
    // The open session is the new one now, and the old one again after Undo.
    if (session.endedAt === undefined) goTo({ place: "log" }, "replace");
  };
  return (
    <>
      <p>Was it another session from here on? What follows becomes one of its own, on the same date.</p>
      {laps.length > 1 && (
        <Field
          label="First lap of the new session"
          value={typed}
          inputMode="numeric"
          size="between"
          onChange={setTyped}
          hint={isFirst ? undefined : `Leave it empty for all of run ${number}.`}
          problem={isEmpty || isRight ? undefined : wrong}
        />
      )}
      <Button size="between" disabled={!isRight} onClick={split}>
        {lap === undefined || lap === 1 ? "Split the session here" : `Split the session at lap ${lap}`}
      </Button>
    </>
  );
}
