import { type Id, sayDate } from "#domain";
import type { WeekTarget } from "#stats";
import { Name } from "#ui/Name.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { counted, sayStandingInShort, sayTargetFigure, sayTargetValue, targetFigure } from "#words";

/** Targets that fit on the page. */
const mostTargets = 5;

interface StatementTargetsProps {
  readonly targets: readonly WeekTarget[];
  readonly nameOf: (comboId: Id) => string;
}

const columns = [
  { key: "combo", title: "combo" },
  { key: "wanted", title: "wanted", figures: true },
  { key: "by", title: "by", figures: true },
  { key: "now", title: "at the week's end", figures: true },
  { key: "state", title: "state" },
] as const;

/** The targets in force as they stood at the end of the week, the nearest date first. */
export function StatementTargets({ targets, nameOf }: StatementTargetsProps) {
  if (targets.length === 0) return <p>No target was in force.</p>;
  const rest = targets.length - mostTargets;
  return (
    <>
      <RuledTable
        caption="Targets in force"
        captionHidden
        columns={columns}
        rows={targets.slice(0, mostTargets).map(({ target, standing, now, isNewlyReached }) => ({
          id: target.id,
          cells: {
            combo: <Name>{nameOf(target.comboId)}</Name>,
            wanted: `${targetFigure(target)} ${sayTargetValue(target.kind, target.value)}`,
            by: target.by === undefined ? "no date" : sayDate(target.by),
            now: now === undefined ? "—" : sayTargetFigure(target.kind, now),
            state: sayStandingInShort({ standing }, isNewlyReached),
          },
        }))}
      />
      {rest > 0 && <p>{counted(rest, "more target")} with later dates, in Targets.</p>}
    </>
  );
}
