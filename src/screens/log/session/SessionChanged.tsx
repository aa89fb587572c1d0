import type { NumberedRun } from "#combo";
import { rigs, runsOfSession, sessionBefore } from "#db";
import type { Run, Session } from "#domain";
import { useRows } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { sessionChanges } from "./sessionChanges.ts";

interface SessionChangedProps {
  readonly session: Session;
  readonly runs: readonly NumberedRun<Run>[];
}

/** What was driven with something else than before, in an ended session; nothing where all stayed as it was. */
export function SessionChanged({ session: { comboId, startedAt }, runs }: SessionChangedProps) {
  const beside = useRows(
    async (book) => {
      const before = await sessionBefore(book, comboId, startedAt);
      return {
        rigs: await rigs(book),
        before: before && { date: before.date, runs: await runsOfSession(book, before.id) },
      };
    },
    [comboId, startedAt],
  );
  const changes = beside === undefined ? [] : sessionChanges({ runs, ...beside });
  if (changes.length === 0) return null;
  return (
    <Part title="What changed">
      <ul>
        {changes.map(({ from, what, now, rigId }) => (
          <li key={`${from} ${what}`}>
            {from}: {what}{" "}
            {rigId === undefined ? (
              <Name>{now}</Name>
            ) : (
              <a href={printAddress({ place: "rig", rigId })}>
                <Name>{now}</Name>
              </a>
            )}
          </li>
        ))}
      </ul>
    </Part>
  );
}
