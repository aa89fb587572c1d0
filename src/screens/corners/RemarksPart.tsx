import { CornerBars } from "#charts/corners/CornerBars.tsx";
import { runsOfSession, sessionsOfCombo } from "#db";
import { aboutRemark, type Corner, type Id, type RemarkKind, remarkKinds } from "#domain";
import { useRows, useUntil } from "#live";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { mostMistakesAt, sayCornerCounts } from "#words";
import styles from "./Corners.module.css";
import { cornerRemarks, type NamedCorner } from "./cornerRemarks.ts";

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
      <Mistakes named={named} corners={corners} />
      <Disclosure title="All remarks, counted" answer={kinds.map(({ word }) => word).join(", ")}>
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
      </Disclosure>
    </Part>
  );
}

/** Kinds that are the driver's own: what a corner is worked on for. */
const own = remarkKinds.filter(({ mistake, place }) => mistake || place === "cut").map(({ kind }) => kind);

interface MistakesProps {
  readonly named: readonly NamedCorner[];
  readonly corners: readonly Corner[];
}

/** The driver's own mistakes and cuts, on the numbers of the corners in lap order. */
function Mistakes({ named, corners }: MistakesProps) {
  const countsOf = (number: number) => {
    const counts = named.find((one) => one.number === number)?.counts;
    return own.flatMap((kind) => {
      const count = counts?.get(kind) ?? 0;
      return count === 0 ? [] : [{ kind, count }];
    });
  };
  const found = named
    .map(({ number }) => ({ number, counts: countsOf(number) }))
    .filter(({ counts }) => counts.length > 0);
  if (found.length === 0) return null;
  const numbers = [...new Set([...corners, ...named].map(({ number }) => number))].sort((a, b) => a - b);
  return (
    <>
      <p className={styles["found"]}>{mostMistakesAt(found)}</p>
      <CornerBars
        columns={numbers.map((number) => ({
          number,
          counts: countsOf(number),
          name: corners.find((corner) => corner.number === number)?.name,
        }))}
        kinds={own.filter((kind) => found.some(({ counts }) => counts.some((one) => one.kind === kind)))}
        label={`Mistakes and cuts by corner: ${sayCornerCounts(found)}`}
      />
    </>
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
