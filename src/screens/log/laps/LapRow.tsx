import { memo } from "react";
import { betweenSigns, formatDelta, formatLapTime, lapSigns, saySectors, signsOf } from "#domain";
import type { LapDifferences } from "#stats";
import { classes } from "#ui/classes.ts";
import { Delta } from "#ui/Delta.tsx";
import { Name } from "#ui/Name.tsx";
import { Spoken } from "#ui/Spoken.tsx";
import { LapBar } from "./LapBar.tsx";
import styles from "./LapTable.module.css";

/** The button of a lap's time in the page: the focus comes back to it when its editor is left. */
export const timeId = (lapId: string) => `time-${lapId}`;

/** Scrolls no further than it takes to have a lap's row in sight; a row that is not drawn is let be. */
export function bringIntoSight(lapId: string): void {
  document.getElementById(timeId(lapId))?.closest("tr")?.scrollIntoView?.({ block: "nearest" });
}

/** What stands in the columns of a table of laps. */
export interface LapColumns {
  readonly hasTarget: boolean;
  readonly sectorCount: number;
  /** On a phone the target stands under the PB, and the sectors on a line of their own. */
  readonly isNarrow: boolean;
  /** Beside each time there is room for its bar. */
  readonly hasBars: boolean;
  /** Decimals the simulator shows: a time known to fewer says so. */
  readonly displayDecimals: number;
}

interface LapRowProps {
  readonly row: LapDifferences;
  readonly columns: LapColumns;
  /** It holds the PB still; another that once took it has lost it since. */
  readonly isStanding: boolean;
  readonly onEdit: (lapId: string) => void;
}

/**
 * One lap of the ledger. All rows are read anew with every lap that is stored; those that say what they said before are not
 * drawn again, or a lap behind hundreds of others would be slow.
 */
export const LapRow = memo(DrawnRow, isSame);

function isSame(a: LapRowProps, b: LapRowProps): boolean {
  return (
    a.columns === b.columns &&
    a.isStanding === b.isStanding &&
    a.onEdit === b.onEdit &&
    JSON.stringify(a.row) === JSON.stringify(b.row)
  );
}

function DrawnRow({ row, columns, isStanding, onEdit }: LapRowProps) {
  const { lap, number, toClean, toBest, toTarget, decimals, isBest } = row;
  const { hasTarget, sectorCount, isNarrow, hasBars, displayDecimals } = columns;
  const isSpoiled = lap.ms === undefined || lap.remarks.length > 0;
  const target = toTarget !== undefined && formatDelta(toTarget, decimals.toTarget);
  // With its signs in the text, and the stroke a note is typed behind, a copied row can be pasted as the lap.
  const said = signsOf(lap, displayDecimals);
  const sectors = saySectors(lap);
  const hasOwnLine = isNarrow && lap.sectors !== undefined;
  return (
    <>
      <tr className={isSpoiled ? styles["soft"] : undefined} data-goes-on={hasOwnLine || undefined}>
        <th scope="row">{number}</th>
        <td className={classes(styles["figures"], hasBars && styles["barred"])}>
          <button id={timeId(lap.id)} type="button" className={styles["time"]} onClick={() => onEdit(lap.id)}>
            <Spoken>Edit lap {number}: </Spoken>
            {lap.ms === undefined ? "no time" : formatLapTime(lap.ms, lap.decimals)}
          </button>
          {hasBars && <LapBar ms={lap.ms} />}
        </td>
        <td className={styles["figures"]}>
          {toClean !== undefined && (
            <Delta ms={toClean} decimals={decimals.toClean} isPlain={isSpoiled}>
              {(way) => <Spoken> {way}</Spoken>}
            </Delta>
          )}
        </td>
        <td className={styles["figures"]}>
          {toBest !== undefined && formatDelta(toBest, decimals.toBest)}
          {isNarrow && hasTarget && (
            <span className={styles["second"]}>
              {" "}
              {target}
              {target && <Spoken> to target</Spoken>}
            </span>
          )}
        </td>
        {hasTarget && !isNarrow && <td className={styles["figures"]}>{target}</td>}
        {!isNarrow &&
          Array.from({ length: sectorCount }, (_, index) => (
            <td key={index} className={styles["figures"]}>
              {sectors[index]}
            </td>
          ))}
        <td className={styles["remarks"]}>
          {isBest &&
            (isStanding ? <strong className={styles["best"]}>{lapSigns.pb}</strong> : lapSigns.wasPb)}
          {isBest && said !== "" && betweenSigns}
          {said}
          {lap.note !== undefined && (
            <span>
              {(isBest || said !== "") && " "}/ <Name>{lap.note}</Name>
            </span>
          )}
        </td>
      </tr>
      {hasOwnLine && (
        <tr className={styles["sectors"]}>
          <td />
          <td colSpan={4}>sectors {sectors.join(" · ")}</td>
        </tr>
      )}
    </>
  );
}
