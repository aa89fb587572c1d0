import { runsOfSession, sessionsOfCombo } from "#db";
import { aboutRemark, type Corner, type Id, type RemarkKind, remarkKinds } from "#domain";
import { useRows, useUntil } from "#live";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import styles from "./Corners.module.css";
import { cornerRemarks } from "./cornerRemarks.ts";

const off = aboutRemark("off");

const lastSessions = 10;

interface RemarksPartProps {
  readonly comboId: Id;
  readonly corners: readonly Corner[];
}

/** How often each corner was named in the remarks of the last sessions. */
export function RemarksPart({ comboId, corners }: RemarksPartProps) {
  const until = useUntil();
  const found = useRows(
    async (book) => {
      const past = (await sessionsOfCombo(book, comboId)).filter(({ startedAt }) => startedAt < until);
      const sessions = past.slice(-lastSessions);
      const runs = await Promise.all(sessions.map(({ id }) => runsOfSession(book, id)));
      return { sessions: sessions.length, ...cornerRemarks(runs.flat()) };
    },
    [comboId, until],
  );
  if (found === undefined) return null;
  const { sessions, laps, corners: named } = found;
  const looked = `${laps} ${laps === 1 ? "lap" : "laps"} of ${sessions === 1 ? "one session" : `the last ${sessions} sessions`}`;
  if (named.length === 0)
    return (
      <Part title="Named in remarks" ruled>
        <p>
          {laps === 0
            ? "No lap of this combo has been written down yet."
            : `No corner was named in ${looked}. Write ${off.letter}@5 after a time for ${off.named} at corner 5.`}
        </p>
      </Part>
    );
  const kinds = remarkKinds.filter(({ kind }) => named.some(({ counts }) => counts.has(kind)));
  return (
    <Part title="Named in remarks" ruled aside={`in ${looked}`}>
      <RuledTable
        caption={`Corners named in ${looked}`}
        captionHidden
        columns={[
          { key: "corner", title: "corner" },
          ...kinds.map(({ kind, word }) => ({ key: kind, title: word, figures: true })),
          { key: "all", title: "in all", figures: true, strong: true },
        ]}
        rows={named.map(({ number, counts, all }) => ({
          id: String(number),
          cells: { corner: <CornerName number={number} corners={corners} />, ...cellsOf(counts), all },
        }))}
      />
    </Part>
  );
}

function cellsOf(counts: ReadonlyMap<RemarkKind, number>): Record<string, number> {
  return Object.fromEntries(counts);
}

function CornerName({ number, corners }: { readonly number: number; readonly corners: readonly Corner[] }) {
  const name = corners.find((corner) => corner.number === number)?.name;
  return (
    <span className={styles["corner"]}>
      {number}
      {name !== undefined && (
        <>
          {" "}
          <Name>{name}</Name>
        </>
      )}
    </span>
  );
}
