import { sayProblem } from "#ui/FieldFrame.tsx";
import styles from "./CornerGrid.module.css";
import { type CornerCell, cornerCells } from "./cornerCells.ts";
import type { CornerRow } from "./cornerRows.ts";
import { problemId } from "./GridCell.tsx";

interface CellProblemsProps {
  readonly row: CornerRow;
  readonly isSaid: (cell: CornerCell) => boolean;
  readonly columns: number;
}

/** What is wrong in a row, and what would be right, under it. */
export function CellProblems({ row: { key, reading, chain }, isSaid, columns }: CellProblemsProps) {
  const wrong = cornerCells.flatMap((cell) => {
    const problem = reading.problems[cell];
    return problem !== undefined && isSaid(cell) ? [{ cell, problem }] : [];
  });
  if (wrong.length === 0) return null;
  return (
    <tr className={styles["wrong"]} data-chain={chain}>
      <td className={styles["bracket"]} />
      <td colSpan={columns - 1}>
        {wrong.map(({ cell, problem }) => (
          <p key={cell} id={problemId(key, cell)}>
            {sayProblem(problem)}
          </p>
        ))}
      </td>
    </tr>
  );
}
