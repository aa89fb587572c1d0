import { differenceShown, type Id, type ShownTime } from "#domain";
import type { WeekLine, WeekStatement } from "#stats";
import { Delta } from "#ui/Delta.tsx";
import { Name } from "#ui/Name.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { counted, sayGain, sayHours, sayLapTime, sayUsual } from "#words";

/** Combos that fit on the page; the others are summed up in one line. */
const mostLines = 6;

interface NamesOf {
  readonly nameOf: (comboId: Id) => string;
}

const drivenColumns = [
  { key: "combo", title: "combo" },
  { key: "sessions", title: "sessions", figures: true },
  { key: "laps", title: "laps", figures: true },
  { key: "wheel", title: "at the wheel", figures: true },
  { key: "mistakes", title: "mistakes", figures: true },
] as const;

type Sums = WeekStatement["total"];

/** What was driven, combo by combo, over a balance that is their sum. */
export function StatementDriven({ statement, nameOf }: { readonly statement: WeekStatement } & NamesOf) {
  const { lines, total } = statement;
  const shown = lines.slice(0, mostLines);
  const rest = lines.slice(mostLines);
  const rows = shown.map((line) => ({
    id: line.comboId,
    cells: { combo: <Name>{nameOf(line.comboId)}</Name>, ...cellsOf(line) },
  }));
  const restRow = {
    id: "rest",
    cells: { combo: counted(rest.length, "more combo"), ...cellsOf(sumOf(rest)) },
  };
  const guests =
    total.guestLaps > 0 &&
    `${counted(total.guestLaps, "lap")} of guests stand beside these figures, in none of them.`;
  return (
    <>
      <RuledTable
        caption="What was driven"
        captionHidden
        columns={drivenColumns}
        rows={rest.length === 0 ? rows : [...rows, restRow]}
        balance={{ id: "total", cells: { combo: "the week", ...cellsOf(total) } }}
      />
      {guests !== false && <p>{guests}</p>}
    </>
  );
}

function cellsOf({ sessions, laps, drivingMs, mistakes }: Sums) {
  return { sessions, laps, wheel: sayHours(drivingMs), mistakes };
}

function sumOf(lines: readonly WeekLine[]): Sums {
  const sum = (field: keyof Sums) => lines.reduce((all, line) => all + line[field], 0);
  return {
    sessions: sum("sessions"),
    laps: sum("laps"),
    guestLaps: sum("guestLaps"),
    drivingMs: sum("drivingMs"),
    mistakes: sum("mistakes"),
  };
}

const timeColumns = [
  { key: "combo", title: "combo" },
  { key: "bestBefore", title: "PB before", figures: true },
  { key: "best", title: "PB after", figures: true },
  { key: "gained", title: "gained", figures: true, strong: true },
  { key: "usualBefore", title: "usual before", figures: true },
  { key: "usual", title: "usual after", figures: true },
  { key: "gain", title: "in 12 weeks", figures: true, strong: true },
] as const;

/** PB and usual lap brought forward into the week and carried on out of it. */
export function StatementTimes({ lines, nameOf }: { readonly lines: readonly WeekLine[] } & NamesOf) {
  return (
    <RuledTable
      caption="PB and usual lap, before the week and after it"
      captionHidden
      columns={timeColumns}
      rows={lines.slice(0, mostLines).map(({ comboId, bestBefore, best, usualBefore, usual, gain }) => ({
        id: comboId,
        cells: {
          combo: <Name>{nameOf(comboId)}</Name>,
          bestBefore: bestBefore === undefined ? none : sayLapTime(bestBefore.ms, bestBefore.decimals),
          best: best === undefined ? none : sayLapTime(best.ms, best.decimals),
          gained: <Moved before={bestBefore} after={best} />,
          usualBefore: usualBefore === undefined ? none : sayUsual(usualBefore.ms, usualBefore.decimals),
          usual: usual === undefined ? none : sayUsual(usual.ms, usual.decimals),
          gain: sayGain(gain),
        },
      }))}
    />
  );
}

const none = "—";

interface MovedProps {
  readonly before: ShownTime | undefined;
  readonly after: ShownTime | undefined;
}

function Moved({ before, after }: MovedProps) {
  if (before === undefined || after === undefined) return none;
  const { ms, decimals } = differenceShown(before, after);
  return (
    <Delta ms={ms} decimals={decimals}>
      {(way) => (way === "the same" ? " s" : ` s ${way}`)}
    </Delta>
  );
}
