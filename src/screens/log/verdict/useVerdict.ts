import { useMemo } from "react";
import { rigTests } from "#db";
import { useFigures, useRows, useToday } from "#live";
import { type RunVerdict, runVerdict } from "#stats";
import type { SaidRun } from "../session/sessionFigures.ts";
import type { SessionData } from "../session/useSession.ts";

/**
 * The verdict of the session's last run. What it is judged by is asked for in the worker when the session begins and when a
 * run has ended; while laps are typed nothing is asked and nothing is judged: a worker that reads all sessions of a combo
 * keeps a lap waiting to be stored.
 * @param said the last run with laps; undefined before the first
 * @param isBetween no lap of the run after it is there yet
 * @returns undefined while it is worked out, and while laps are typed
 */
export function useVerdict(
  { session, preferences }: SessionData,
  said: SaidRun | undefined,
  isBetween: boolean,
): RunVerdict | undefined {
  const { comboId, startedAt, date } = session;
  const today = useToday(preferences);
  const surface = said?.run.surface ?? "dry";
  const { value: basis } = useFigures("runBasis", { comboId, startedAt, date, surface, today }, !isBetween);
  const tests = useRows(
    async (book) => (isBetween ? await rigTests(book, comboId) : undefined),
    [comboId, isBetween],
  );
  return useMemo(() => {
    if (!isBetween || said === undefined || basis === undefined || tests === undefined) return undefined;
    const { run, runsBefore } = said;
    return runVerdict({ run, runsBefore, basis, tests, preferences });
  }, [isBetween, said, basis, tests, preferences]);
}
