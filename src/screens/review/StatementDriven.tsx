import { SmallColumns } from "#charts/small/SmallColumns.tsx";
import type { Id } from "#domain";
import { printAddress } from "#state/address.ts";
import type { WeekLine, WeekStatement } from "#stats";
import { counted, sayHours } from "#words";
import { type FigureColumn, FigureRows } from "./FigureRows.tsx";

/** Combos that fit on the page; the others are summed up in one line. */
export const mostLines = 6;

type Sums = Omit<WeekStatement["total"], "guestLaps">;

const columns: readonly FigureColumn<Sums>[] = [
  {
    key: "days",
    title: "Mon to Sun",
    isWide: true,
    cell: ({ days }) => <SmallColumns values={days} />,
  },
  {
    key: "laps",
    title: "laps",
    cell: ({ laps, sessions }) => `${laps} in ${counted(sessions, "session")}`,
  },
  { key: "clean", title: "clean", cell: sayClean },
  { key: "wheel", title: "at the wheel", cell: ({ drivingMs }) => sayHours(drivingMs) },
  { key: "mistakes", title: "mistakes", cell: ({ mistakes }) => mistakes },
];

/** "38 of 41, 93 %" */
function sayClean({ clean, timed }: Sums): string {
  return timed === 0 ? "—" : `${clean} of ${timed}, ${Math.round((100 * clean) / timed)} %`;
}

interface StatementDrivenProps {
  readonly statement: WeekStatement;
  readonly nameOf: (comboId: Id) => string;
}

/** What was driven, combo by combo, over a balance that is their sum. */
export function StatementDriven({ statement, nameOf }: StatementDrivenProps) {
  const { lines, total } = statement;
  const rest = lines.slice(mostLines);
  const rows = lines.slice(0, mostLines).map((line) => ({
    id: line.comboId,
    name: nameOf(line.comboId),
    href: printAddress({ place: "review", comboId: line.comboId, period: { kind: "12w" } }),
    row: line,
  }));
  const more = { id: "rest", name: counted(rest.length, "more combo"), row: sumOf(rest) };
  return (
    <>
      <FigureRows<Sums>
        label="What was driven"
        of="combo"
        set="driven"
        columns={columns}
        rows={rest.length === 0 ? rows : [...rows, more]}
        balance={{ id: "total", name: "the week", row: total }}
      />
      {total.guestLaps > 0 && (
        <p>{counted(total.guestLaps, "lap")} of guests stand beside these figures, in none of them.</p>
      )}
    </>
  );
}

function sumOf(lines: readonly WeekLine[]): Sums {
  const sum = (field: Exclude<keyof Sums, "days">) => lines.reduce((all, line) => all + line[field], 0);
  return {
    days: Array.from({ length: 7 }, (_, day) => lines.reduce((all, { days }) => all + (days[day] ?? 0), 0)),
    sessions: sum("sessions"),
    laps: sum("laps"),
    drivingMs: sum("drivingMs"),
    mistakes: sum("mistakes"),
    clean: sum("clean"),
    timed: sum("timed"),
  };
}
