import type { ReactNode } from "react";
import {
  differenceShown,
  type Figure,
  formatDelta,
  formatLapTime,
  formatPercent,
  formatSeconds,
} from "#domain";
import type { SideBySide, SideFigures } from "#stats";
import { Delta } from "#ui/Delta.tsx";
import type { Row } from "#ui/RuledTable.tsx";
import { Spoken } from "#ui/Spoken.tsx";
import { accountLineNames, isClear, sayLapTime, sayShiftEnds, sayUsual, shareEnds } from "#words";
import styles from "./Compare.module.css";

const none = "—";

/** What the two figures of a row are called, and how they are told apart. */
function row(id: string, title: string, cells: Omit<Row["cells"], "figure">): Row {
  return { id, cells: { figure: title, ...cells } };
}

/**
 * Best, usual, scatter and clean share of both with the ranges they very likely lie in, and the differences from the earlier
 * to the later. Where times do not compare, what is left is told in percent of each one's own usual lap.
 */
export function compareRows({ first, second, apart, shift }: SideBySide): Row[] {
  if (apart !== undefined) return percentRows(first, second);
  return [
    bestRow(first, second),
    usualRow(first, second, shift),
    scatterRow(first, second),
    shareRow(first, second),
  ];
}

function bestRow({ best: a }: SideFigures, { best: b }: SideFigures): Row {
  return row("best", "best", {
    first: a.known ? sayLapTime(a.value.ms, a.value.decimals) : none,
    second: b.known ? sayLapTime(b.value.ms, b.value.decimals) : none,
    difference: a.known && b.known && (
      <>
        <Difference {...differenceShown(a.value, b.value)} isPlain />
        <Range>single laps: no range</Range>
      </>
    ),
  });
}

function usualRow(first: SideFigures, second: SideFigures, shift: SideBySide["shift"]): Row {
  const [a, b] = [shownUsual(first), shownUsual(second)];
  return row("usual", "usual", {
    first: a === undefined ? none : sayUsual(a.ms, a.decimals),
    second: b === undefined ? none : sayUsual(b.ms, b.decimals),
    difference: a && b && (
      <>
        <Difference {...differenceShown(a, b)} isPlain={!shift.known || !isClear(shift.value)} />
        {shift.known && <Range>{sayShiftEnds(shift.value)}</Range>}
      </>
    ),
  });
}

function shownUsual({ usual, usualDecimals }: SideFigures) {
  return usual.known ? { ms: usual.value, decimals: usualDecimals } : undefined;
}

function scatterRow({ scatter: a }: SideFigures, { scatter: b }: SideFigures): Row {
  const say = (figure: SideFigures["scatter"]) => {
    if (!figure.known) return none;
    const { scatterMs, lowMs, highMs } = figure.value;
    return (
      <>
        {formatSeconds(scatterMs, 2)}
        <Range>
          {formatSeconds(lowMs, 2)} to {formatSeconds(highMs, 2)}
        </Range>
      </>
    );
  };
  const isApart = a.known && b.known && (a.value.highMs < b.value.lowMs || b.value.highMs < a.value.lowMs);
  return row("scatter", "laps differ by", {
    first: say(a),
    second: say(b),
    difference: a.known && b.known && <Range>{isApart ? "ranges apart" : "ranges overlap"}</Range>,
  });
}

function shareRow(first: SideFigures, second: SideFigures): Row {
  const say = ({ cleanShare }: SideFigures) =>
    cleanShare === undefined ? (
      none
    ) : (
      <>
        {formatPercent(cleanShare.share, 0)}
        <Range>{shareEnds(cleanShare).join(" to ")} %</Range>
      </>
    );
  return row("clean", "laps clean", { first: say(first), second: say(second) });
}

/** Where the time of both goes, line by line, against one time. */
export function accountRows({ first, second, target }: SideBySide): Row[] {
  const [a, b] = [first.account, second.account];
  if (target === undefined || !a.known || !b.known) return [];
  const keys = ["pace", "repeatability", "mistakes", "others", "balance"] as const;
  return keys.map((key) =>
    row(
      `account ${key}`,
      key === "balance" ? `mean lap to ${formatLapTime(target.ms)}` : accountLineNames[key],
      {
        first: formatDelta(a.value[key]),
        second: formatDelta(b.value[key]),
        difference: <Difference ms={b.value[key] - a.value[key]} decimals={3} isPlain />,
      },
    ),
  );
}

/** The usual sectors of both. */
export function sectorRows({ first, second, apart }: SideBySide): Row[] {
  const [a, b] = [first.sectors, second.sectors];
  if (apart !== undefined) return [];
  if (!a.known || !b.known || a.value.sectors.length !== b.value.sectors.length) return [];
  return a.value.sectors.flatMap(({ usual }, index) => {
    const other = b.value.sectors[index];
    if (other === undefined) return [];
    return [
      row(`sector ${index}`, `sector ${index + 1}`, {
        first: sayUsual(usual),
        second: sayUsual(other.usual),
        difference: <Difference ms={other.usual - usual} decimals={3} isPlain />,
      }),
    ];
  });
}

function percentRows(first: SideFigures, second: SideFigures): Row[] {
  const scatter = ({ scatter: figure }: SideFigures) => percentOf(figure, ({ percent }) => percent / 100);
  const best = ({ best: figure, usual }: SideFigures) =>
    percentOf(figure, ({ ms }) => (usual.known ? usual.value / ms - 1 : undefined));
  return [
    row("best", "best under usual by", { first: best(first), second: best(second) }),
    row("scatter", "laps differ by", { first: scatter(first), second: scatter(second) }),
    shareRow(first, second),
  ];
}

function percentOf<T>(figure: Figure<T>, of: (value: T) => number | undefined): string {
  const fraction = figure.known ? of(figure.value) : undefined;
  return fraction === undefined ? none : formatPercent(fraction, 2);
}

/** What stands under a figure in small letters: where it very likely lies. */
function Range({ children }: { readonly children: ReactNode }) {
  return <span className={styles["between"]}>{children}</span>;
}

interface DifferenceProps {
  readonly ms: number;
  readonly decimals: number;
  /** It may be chance, or nothing tells whether it is: without ink. */
  readonly isPlain: boolean;
}

function Difference(props: DifferenceProps) {
  return <Delta {...props}>{(way) => <Spoken> {way}</Spoken>}</Delta>;
}
