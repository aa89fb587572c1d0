import type { ReactNode } from "react";
import { sayDate } from "#domain";
import { printAddress } from "#state/address.ts";
import { type AcrossFigure, acrossFigures, acrossValue, type ComboLine } from "#stats";
import { Name } from "#ui/Name.tsx";
import { acrossWords, sayAcross, sayGain, sayHours, sayLapTime, sayTargetValue, targetFigure } from "#words";
import styles from "./Across.module.css";

/** One combo's line with its name. */
export interface NamedLine {
  readonly line: ComboLine;
  readonly name: string;
}

/** A column of the table of all combos. */
export interface AcrossColumn {
  readonly key: string;
  readonly title: string;
  readonly figures?: true;
  /** What the rows are sorted by; undefined sorts last, either way. */
  readonly by: (row: NamedLine) => number | string | undefined;
  readonly cell: (row: NamedLine) => ReactNode;
}

/** The two sides of the table: practice in percent, and how it stands with times and targets. */
export type AcrossSide = "percent" | "standing";

const combo: AcrossColumn = {
  key: "combo",
  title: "combo",
  by: ({ name }) => name.toLowerCase(),
  cell: ({ line: { comboId }, name }) => (
    <a href={printAddress({ place: "review", comboId, period: { kind: "all" } })}>
      <Name>{name}</Name>
    </a>
  ),
};

const laps: AcrossColumn = {
  key: "laps",
  title: "laps",
  figures: true,
  by: ({ line }) => line.laps,
  cell: ({ line }) => line.laps,
};

const last: AcrossColumn = {
  key: "last",
  title: "last driven",
  figures: true,
  by: ({ line }) => line.lastAt,
  cell: ({ line }) => sayDate(line.lastOn),
};

const nothing = "—";

const percentColumn = (figure: AcrossFigure): AcrossColumn => ({
  key: figure,
  title: acrossWords[figure].column,
  figures: true,
  by: ({ line }) => acrossValue(line, figure),
  cell: ({ line }) => {
    const value = acrossValue(line, figure);
    return value === undefined ? nothing : sayAcross(figure, value);
  },
});

const standing: readonly AcrossColumn[] = [
  {
    key: "hours",
    title: "at the wheel",
    figures: true,
    by: ({ line }) => line.drivingMs,
    cell: ({ line }) => sayHours(line.drivingMs),
  },
  {
    key: "best",
    title: "PB",
    figures: true,
    by: ({ line }) => line.best?.ms,
    cell: ({ line: { best } }) =>
      best === undefined ? (
        nothing
      ) : (
        <>
          {sayLapTime(best.ms, best.decimals)}
          <span className={styles["detail"]}>{sayDate(best.date)}</span>
        </>
      ),
  },
  {
    key: "gain",
    title: "in 12 weeks",
    figures: true,
    by: ({ line: { gain } }) => (gain.known ? gain.value.change : undefined),
    cell: ({ line }) => sayGain(line.gain),
  },
  {
    key: "target",
    title: "next target",
    figures: true,
    by: ({ line: { nextTarget } }) => nextTarget && (nextTarget.by ?? "9999-12-31"),
    cell: ({ line: { nextTarget } }) =>
      nextTarget === undefined ? (
        nothing
      ) : (
        <>
          {targetFigure(nextTarget)} {sayTargetValue(nextTarget.kind, nextTarget.value)}
          {nextTarget.by !== undefined && (
            <span className={styles["detail"]}>by {sayDate(nextTarget.by)}</span>
          )}
        </>
      ),
  },
];

/** The columns of a side, the combo first. */
export const acrossColumns: Readonly<Record<AcrossSide, readonly AcrossColumn[]>> = {
  percent: [combo, ...acrossFigures.map(percentColumn), laps, last],
  standing: [combo, laps, ...standing, last],
};

/** Rows in the order of a column; what is not known stands last, either way. */
export function sortedBy(
  rows: readonly NamedLine[],
  { by }: AcrossColumn,
  direction: "ascending" | "descending",
): NamedLine[] {
  const sign = direction === "ascending" ? 1 : -1;
  return rows.toSorted((a, b) => {
    const [left, right] = [by(a), by(b)];
    if (left === undefined || right === undefined) return left === right ? 0 : left === undefined ? 1 : -1;
    return left < right ? -sign : left > right ? sign : 0;
  });
}
