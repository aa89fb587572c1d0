import { aboutRemark, remarkKinds } from "#domain";
import type { CornersReport } from "#stats";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { counted, mostMistakesAt } from "#words";
import styles from "./Answer.module.css";

const off = aboutRemark("off");

/** How often each corner was named by a mistake or a cut, in the last sessions. */
export function RemarksTable({ report: { corners, sessions, laps } }: { readonly report: CornersReport }) {
  const named = corners
    .filter(({ mistakes }) => mistakes.counts.length > 0)
    .map(({ number, name, mistakes: { counts } }) => ({
      number,
      name,
      counts,
      all: counts.reduce((sum, { count }) => sum + count, 0),
    }))
    .sort((a, b) => b.all - a.all || a.number - b.number);
  const looked = `${counted(laps, "lap")} of ${sessions === 1 ? "one session" : `the last ${sessions} sessions`}`;
  if (named.length === 0)
    return (
      <Part title="Named in remarks" ruled>
        <p className={styles["soft"]}>
          {laps === 0
            ? "No lap of this combo has been written down yet."
            : `No corner was named by a mistake or a cut in ${looked}. Write ${off.letter}@5 after a time for ${off.named} at corner 5.`}
        </p>
      </Part>
    );
  const kinds = remarkKinds.filter(({ kind }) =>
    named.some(({ counts }) => counts.some((one) => one.kind === kind)),
  );
  return (
    <Part title="Named in remarks" ruled aside={`in ${looked}`}>
      <p>{mostMistakesAt(named)}</p>
      <Disclosure title="All of them, counted" answer={kinds.map(({ word }) => word).join(", ")}>
        <RuledTable
          caption={`Corners named in ${looked}`}
          captionHidden
          columns={[
            { key: "corner", title: "corner" },
            ...kinds.map(({ kind, word }) => ({ key: kind, title: word, figures: true })),
            { key: "all", title: "in all", figures: true, strong: true },
          ]}
          rows={named.map(({ number, name, counts, all }) => ({
            id: String(number),
            cells: {
              corner: (
                <>
                  {number} {name !== undefined && <Name>{name}</Name>}
                </>
              ),
              ...Object.fromEntries(counts.map(({ kind, count }) => [kind, count])),
              all,
            },
          }))}
        />
      </Disclosure>
    </Part>
  );
}
