import { type CalendarDate, differenceShown, type Id, type ShownTime } from "#domain";
import { printAddress } from "#state/address.ts";
import { LATELY_DAYS, type WeekLine, type WeekStatement } from "#stats";
import { Delta } from "#ui/Delta.tsx";
import { type KnownOn, sayLapTime, sayUsual, weekAgainstMeaning } from "#words";
import { type FigureColumn, FigureRows } from "./FigureRows.tsx";
import { GainFigure } from "./GainFigure.tsx";
import styles from "./Statement.module.css";
import { mostLines } from "./StatementDriven.tsx";

const columnsOf = (on: KnownOn): readonly FigureColumn<WeekLine>[] => [
  {
    key: "level",
    title: "level over four weeks",
    isWide: true,
    cell: ({ lately }) => <GainFigure gain={lately} column={{ ...on, days: LATELY_DAYS }} />,
  },
  { key: "best", title: "PB", cell: ({ best }) => timeOf(best, sayLapTime) },
  {
    key: "gained",
    title: "PB this week",
    cell: ({ bestBefore, best }) => <Moved before={bestBefore} after={best} />,
  },
  { key: "usual", title: "usual", cell: ({ usual }) => timeOf(usual, sayUsual) },
  { key: "usualBefore", title: "usual before", cell: ({ usualBefore }) => timeOf(usualBefore, sayUsual) },
];

interface StatementAgainstProps {
  readonly statement: WeekStatement;
  readonly today: CalendarDate;
  readonly nameOf: (comboId: Id) => string;
}

/** Where each combo stands at the end of the week, and what it was before. */
export function StatementAgainst({ statement, today, nameOf }: StatementAgainstProps) {
  const { lines, asOf } = statement;
  return (
    <>
      <FigureRows
        label="PB, usual lap and level, before the week and after it"
        of="combo"
        set="against"
        columns={columnsOf({ asOf, today })}
        rows={lines.slice(0, mostLines).map((line) => ({
          id: line.comboId,
          name: nameOf(line.comboId),
          href: printAddress({ place: "review", comboId: line.comboId, period: { kind: "4w" } }),
          row: line,
        }))}
      />
      <p className={styles["soft"]}>{weekAgainstMeaning(asOf, today)}</p>
    </>
  );
}

const none = "—";

interface KnownTime {
  readonly ms: number;
  readonly decimals: number;
}

function timeOf(time: KnownTime | undefined, say: (ms: number, decimals: number) => string): string {
  return time === undefined ? none : say(time.ms, time.decimals);
}

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
