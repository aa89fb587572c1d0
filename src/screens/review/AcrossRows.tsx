import { useState } from "react";
import { SmallLine } from "#charts/small/SmallLine.tsx";
import { sayDate, sayShortDate } from "#domain";
import { printAddress } from "#state/address.ts";
import { acrossFigures, acrossValue, type ComboLine, SEASON_DAYS } from "#stats";
import { Choice } from "#ui/Choice.tsx";
import { Select } from "#ui/Select.tsx";
import { acrossWords, gainInShort, sayAcross, sayHours, sayScatterAsTime, sayToGo } from "#words";
import styles from "./AcrossRows.module.css";
import { type AcrossSide, acrossOrders, inOrderOf, type NamedLine, sideToBegin } from "./acrossOrders.ts";
import { type FigureColumn, FigureRows } from "./FigureRows.tsx";
import { GainFigure } from "./GainFigure.tsx";
import { dayNumber, leastShown } from "./reviewCharts.ts";

const sides = [
  { value: "weeks", label: "over the weeks" },
  { value: "circuits", label: "from circuit to circuit" },
] as const;

interface AcrossRowsProps {
  readonly rows: readonly NamedLine[];
  readonly today: string;
}

/** All combos, a row each, in the order the driver asks for. */
export function AcrossRows({ rows, today }: AcrossRowsProps) {
  const [side, setSide] = useState<AcrossSide>(() => sideToBegin(rows));
  const [wanted, setWanted] = useState("last");
  const orders = acrossOrders[side];
  const order = orders.find(({ value }) => value === wanted) ?? orders[0];
  if (order === undefined) return null;
  return (
    <div className={styles["part"]}>
      <div className={styles["choices"]}>
        <Choice label="Rows show" value={side} options={sides} onChange={setSide} />
        <Select label="Sorted by" value={order.value} options={orders} onChange={setWanted} />
      </div>
      <FigureRows
        label={`All combos, sorted by: ${order.label}`}
        of="combo"
        set={side}
        columns={side === "weeks" ? weekColumns(today) : circuitColumns(today)}
        rows={inOrderOf(rows, order).map(({ line, name }) => ({
          id: line.comboId,
          name,
          href: printAddress({ place: "review", comboId: line.comboId, period: { kind: "all" } }),
          row: line,
        }))}
      />
    </div>
  );
}

type Column = FigureColumn<ComboLine>;

const nothing = "—";

const last = (today: string): Column => ({
  key: "last",
  title: "last driven",
  cell: ({ lastOn }) => <span title={sayDate(lastOn)}>{sayShortDate(lastOn, today)}</span>,
});

const weekColumns = (today: string): readonly Column[] => [
  { key: "level", title: "level over the weeks", isWide: true, cell: (line) => <Level line={line} /> },
  {
    key: "gained",
    title: "gained in 12 weeks",
    isWide: true,
    cell: ({ gain }) => <GainFigure gain={gain} column={{ days: SEASON_DAYS, asOf: today, today }} />,
  },
  {
    key: "scatter",
    title: "laps differ by",
    cell: ({ scatterMs }) => (scatterMs === undefined ? nothing : sayScatterAsTime(scatterMs)),
  },
  { key: "go", title: "to go", cell: ({ toGo }) => (toGo === undefined ? nothing : sayToGo(toGo)) },
  last(today),
];

const circuitColumns = (today: string): readonly Column[] => [
  ...acrossFigures.map(
    (figure): Column => ({
      key: figure,
      title: acrossWords[figure].column,
      cell: (line) => {
        const value = acrossValue(line, figure);
        return value === undefined ? nothing : sayAcross(figure, value);
      },
    }),
  ),
  { key: "laps", title: "laps", cell: ({ laps }) => laps },
  { key: "wheel", title: "at the wheel", cell: ({ drivingMs }) => sayHours(drivingMs) },
  last(today),
];

function Level({ line: { level, usuals, gain } }: { readonly line: ComboLine }) {
  const leastSpan = leastShown * (usuals.at(-1)?.ms ?? 0);
  if (!gain.known)
    return (
      <SmallLine
        points={usuals.map(({ date, ms }) => ({ x: dayNumber(date), mid: ms }))}
        leastSpan={leastSpan}
        isDots
      />
    );
  const { way } = gainInShort(gain);
  const points = level.map(({ date, low, mid, high }) => ({ x: dayNumber(date), low, mid, high }));
  return <SmallLine points={points} leastSpan={leastSpan} isChance={way === "neither"} />;
}
