import { type ReactNode, useMemo } from "react";
import type { LapDifferences } from "#stats";
import { classes } from "#ui/classes.ts";
import { Spoken } from "#ui/Spoken.tsx";
import { useOverflow } from "#ui/useOverflow.ts";
import { useIsNarrow } from "../session/useIsNarrow.ts";
import { type LapColumns, LapRow } from "./LapRow.tsx";
import styles from "./LapTable.module.css";

interface LapTableProps {
  readonly caption: string;
  readonly rows: readonly LapDifferences[];
  /** The lap being edited, with its editor in place of its row. */
  readonly edited: string | undefined;
  readonly editor: ReactNode;
  readonly onEdit: (lapId: string) => void;
  /** The lap that holds the PB, of whatever run. */
  readonly standingId: string | undefined;
  /** A usual lap is known to lay the laps beside; `BarsOf` around the table says how far the bars reach. */
  readonly hasBars: boolean;
  /** Decimals the simulator shows. */
  readonly displayDecimals: number;
}

/** The laps of one run: number, time, differences, sectors and remarks; a time opens its lap for editing. */
export function LapTable({
  caption,
  rows,
  edited,
  editor,
  onEdit,
  standingId,
  hasBars,
  displayDecimals,
}: LapTableProps) {
  const sectorCount = Math.max(0, ...rows.map(({ lap }) => lap.sectors?.length ?? 0));
  const hasTarget = rows.some((row) => row.toTarget !== undefined);
  const isNarrow = useIsNarrow();
  const columns = useMemo<LapColumns>(
    () => ({ hasTarget, sectorCount, isNarrow, hasBars, displayDecimals }),
    [hasTarget, sectorCount, isNarrow, hasBars, displayDecimals],
  );
  const { box, overflows } = useOverflow();
  const focusable = overflows ? { tabIndex: 0, role: "region", "aria-label": caption } : {};
  return (
    <div ref={box} className={styles["box"]} data-overflows={overflows} {...focusable}>
      <table className={styles["table"]}>
        <caption>
          <Spoken>{caption}</Spoken>
        </caption>
        <thead>
          <tr>
            <th scope="col">lap</th>
            <th scope="col" className={classes(styles["figures"], hasBars && styles["barred"])}>
              time
            </th>
            <th scope="col" className={classes(styles["figures"], styles["clean"])}>
              to last clean
            </th>
            <th scope="col" className={styles["figures"]}>
              to PB
              {hasTarget && isNarrow && <span className={styles["second"]}>to target</span>}
            </th>
            {hasTarget && !isNarrow && (
              <th scope="col" className={styles["figures"]}>
                to target
              </th>
            )}
            {!isNarrow &&
              Array.from({ length: sectorCount }, (_, index) => (
                <th key={index} scope="col" className={classes(styles["figures"], styles["sector"])}>
                  sector {index + 1}
                </th>
              ))}
            <th scope="col">remarks</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) =>
            row.lap.id === edited ? (
              <tr key={row.lap.id}>
                <td
                  colSpan={isNarrow ? 5 : 5 + (hasTarget ? 1 : 0) + sectorCount}
                  className={styles["editor"]}
                >
                  {editor}
                </td>
              </tr>
            ) : (
              <LapRow
                key={row.lap.id}
                row={row}
                columns={columns}
                isStanding={row.lap.id === standingId}
                onEdit={onEdit}
              />
            ),
          )}
        </tbody>
      </table>
    </div>
  );
}
