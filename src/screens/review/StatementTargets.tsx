import { type Id, sayDate } from "#domain";
import { printAddress } from "#state/address.ts";
import type { WeekTarget } from "#stats";
import { counted, sayStandingInShort, sayTargetFigure, sayTargetValue, targetFigure } from "#words";
import { type FigureColumn, FigureRows } from "./FigureRows.tsx";

/** Targets that fit on the page. */
const mostTargets = 5;

interface StatementTargetsProps {
  readonly targets: readonly WeekTarget[];
  readonly nameOf: (comboId: Id) => string;
}

const columns: readonly FigureColumn<WeekTarget>[] = [
  {
    key: "wanted",
    title: "wanted",
    isWide: true,
    cell: ({ target }) => `${targetFigure(target)} ${sayTargetValue(target.kind, target.value)}`,
  },
  {
    key: "now",
    title: "at the week's end",
    cell: ({ target, now }) => (now === undefined ? "—" : sayTargetFigure(target.kind, now)),
  },
  {
    key: "by",
    title: "by",
    cell: ({ target }) => (target.by === undefined ? "no date" : sayDate(target.by)),
  },
  {
    key: "state",
    title: "state",
    cell: ({ standing, isNewlyReached }) => sayStandingInShort({ standing }, isNewlyReached),
  },
];

/** The targets in force as they stood at the end of the week, the nearest date first. */
export function StatementTargets({ targets, nameOf }: StatementTargetsProps) {
  if (targets.length === 0) return <p>No target was in force.</p>;
  const rest = targets.length - mostTargets;
  return (
    <>
      <FigureRows
        label="Targets in force"
        of="combo"
        set="targets"
        columns={columns}
        rows={targets.slice(0, mostTargets).map((row) => ({
          id: row.target.id,
          name: nameOf(row.target.comboId),
          href: printAddress({ place: "targets", comboId: row.target.comboId }),
          row,
        }))}
      />
      {rest > 0 && <p>{counted(rest, "more target")} with later dates, in Targets.</p>}
    </>
  );
}
