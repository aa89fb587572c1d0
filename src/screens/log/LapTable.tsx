import { type ReactNode, useEffect, useRef } from "react";
import { formatDelta, formatLapTime, remarkInWords } from "#domain";
import type { LapDifferences } from "#stats";
import { Ink } from "#ui/Ink.tsx";
import { Name } from "#ui/Name.tsx";
import { Spoken } from "#ui/Spoken.tsx";
import { useOverflow } from "#ui/useOverflow.ts";
import styles from "./LapTable.module.css";

/** The button of a lap's time in the page: the focus comes back to it when its editor is left. */
export const timeId = (lapId: string) => `time-${lapId}`;

interface LapTableProps {
  readonly caption: string;
  readonly rows: readonly LapDifferences[];
  /** The lap being edited, with its editor in place of its row. */
  readonly edited: string | undefined;
  readonly editor: ReactNode;
  readonly onEdit: (lapId: string) => void;
  /** Keep the last row in sight when a lap is added. */
  readonly isFollowed: boolean;
}

/** The laps of one run: number, time, differences, sectors and remarks; a time opens its lap for editing. */
export function LapTable({ caption, rows, edited, editor, onEdit, isFollowed }: LapTableProps) {
  const last = useRef<HTMLTableRowElement>(null);
  const count = rows.length;
  useEffect(() => {
    if (isFollowed) last.current?.scrollIntoView?.({ block: "nearest" });
  }, [count, isFollowed]);
  const sectorCount = Math.max(0, ...rows.map(({ lap }) => lap.sectors?.length ?? 0));
  const hasTarget = rows.some((row) => row.toTarget !== undefined);
  const columns = 5 + (hasTarget ? 1 : 0) + sectorCount;
  const { box, overflows } = useOverflow();
  const focusable = overflows ? { tabIndex: 0, role: "region", "aria-label": caption } : {};
  return (
    <div ref={box} className={styles["box"]} {...focusable}>
      <table className={styles["table"]}>
        <caption>
          <Spoken>{caption}</Spoken>
        </caption>
        <thead>
          <tr>
            <th scope="col">lap</th>
            <th scope="col" className={styles["figures"]}>
              time
            </th>
            <th scope="col" className={styles["figures"]}>
              to last clean
            </th>
            <th scope="col" className={styles["figures"]}>
              to PB
            </th>
            {hasTarget && (
              <th scope="col" className={styles["wide"]}>
                to target
              </th>
            )}
            {Array.from({ length: sectorCount }, (_, index) => (
              <th key={index} scope="col" className={styles["wide"]}>
                sector {index + 1}
              </th>
            ))}
            <th scope="col">remarks</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) =>
            row.lap.id === edited ? (
              <tr key={row.lap.id} ref={index === count - 1 ? last : undefined}>
                <td colSpan={columns} className={styles["editor"]}>
                  {editor}
                </td>
              </tr>
            ) : (
              <LapRow
                key={row.lap.id}
                row={row}
                ref={index === count - 1 ? last : undefined}
                hasTarget={hasTarget}
                sectorCount={sectorCount}
                onEdit={onEdit}
              />
            ),
          )}
        </tbody>
      </table>
    </div>
  );
}

interface LapRowProps {
  readonly row: LapDifferences;
  readonly ref: React.Ref<HTMLTableRowElement> | undefined;
  readonly hasTarget: boolean;
  readonly sectorCount: number;
  readonly onEdit: (lapId: string) => void;
}

function LapRow({ row, ref, hasTarget, sectorCount, onEdit }: LapRowProps) {
  const { lap, number, toClean, toBest, toTarget, isBest } = row;
  const isSpoiled = lap.ms === undefined || lap.remarks.length > 0;
  return (
    <tr ref={ref} className={isSpoiled ? styles["soft"] : undefined}>
      <th scope="row">{number}</th>
      <td className={styles["figures"]}>
        <button id={timeId(lap.id)} type="button" className={styles["time"]} onClick={() => onEdit(lap.id)}>
          <Spoken>Edit lap {number}: </Spoken>
          {lap.ms === undefined ? "no time" : formatLapTime(lap.ms, lap.decimals)}
        </button>
      </td>
      <td className={styles["figures"]}>{toClean !== undefined && <Delta ms={toClean} />}</td>
      <td className={styles["figures"]}>{toBest !== undefined && formatDelta(toBest)}</td>
      {hasTarget && <td className={styles["wide"]}>{toTarget !== undefined && formatDelta(toTarget)}</td>}
      {Array.from({ length: sectorCount }, (_, index) => {
        const sector = lap.sectors?.[index];
        return (
          <td key={index} className={styles["wide"]}>
            {sector !== undefined && formatLapTime(sector)}
          </td>
        );
      })}
      <td className={styles["remarks"]}>
        {isBest && <strong className={styles["best"]}>PB</strong>}
        {lap.isNotBest && <span>not a PB</span>}
        {lap.remarks.length > 0 && <span>{lap.remarks.map(remarkInWords).join(", ")}</span>}
        {lap.source === "memory" && <span>from memory</span>}
        {lap.note !== undefined && (
          <span>
            <Name>{lap.note}</Name>
          </span>
        )}
      </td>
    </tr>
  );
}

/** Faster or slower by a sign and a word first, then by the ink. */
function Delta({ ms }: { readonly ms: number }) {
  return (
    <Ink tone={ms < 0 ? "gain" : ms > 0 ? "loss" : "plain"}>
      {formatDelta(ms)}
      <Spoken>{ms < 0 ? " faster" : ms > 0 ? " slower" : " level"}</Spoken>
    </Ink>
  );
}
