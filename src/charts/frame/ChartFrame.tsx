import { type ReactNode, useState } from "react";
import { type CalendarDate, sayDate } from "#domain";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import styles from "./ChartFrame.module.css";
import { ChartMenu } from "./ChartMenu.tsx";
import type { ChartRow, ChartTable } from "./chartTable.ts";
import { type Room, useRoom } from "./useRoom.ts";
import { useWalk, type Walk, type WalkSeries } from "./useWalk.ts";

/** What every chart takes from its caller. */
export interface ChartWords {
  /** The finding, from a test that can also say "no clear change". */
  readonly title: string;
  /** One sentence that says what the chart says. */
  readonly reading: string;
  /** The finding is the largest thing on the screen. */
  readonly large?: boolean;
  /** Level of the title among the page's headings. */
  readonly level?: 2 | 3 | 4;
  /** The day the figures are of: in saved pictures and file names. */
  readonly asOf: CalendarDate;
  /** First words of a saved file's name: "Varnholt Ring club hatch progress". */
  readonly fileName: string;
}

export interface ChartFrameProps extends ChartWords {
  readonly table: ChartTable;
  /** The points the arrow keys walk, by series. */
  readonly series: readonly WalkSeries[];
  /** How many points were left out, or anything else to be said under the chart. */
  readonly note?: string | undefined;
  /** Enter or a click at a point with an id. */
  readonly onOpen?: ((id: string) => void) | undefined;
  /** No line of words stands above the first thing drawn. */
  readonly above?: "none";
  /** Buttons beside the menu: what else may be drawn. */
  readonly beside?: ReactNode;
  readonly children: (room: Room, walk: Walk) => ReactNode;
}

/** One frame for all charts: finding, chart, what stands at a point, and in words what the chart says; table and files at a button. */
export function ChartFrame(props: ChartFrameProps) {
  const {
    title,
    reading,
    large = false,
    level = 3,
    asOf,
    fileName,
    table,
    series,
    note,
    onOpen,
    above,
    beside,
    children,
  } = props;
  const { box, square, room } = useRoom();
  const walk = useWalk(series, onOpen);
  const [isTableOpen, setTableOpen] = useState(false);
  const Heading = `h${level}` as const;
  return (
    <div className={styles["frame"]}>
      <Heading className={large ? styles["large"] : undefined}>{title}</Heading>
      {/* biome-ignore lint/a11y/useSemanticElements: the figure is the drawing alone, not its words and buttons */}
      <div
        ref={box}
        role="figure"
        aria-label={`${title}. ${reading}`}
        aria-roledescription="chart"
        aria-description="Arrow keys walk its points"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: its points are walked by the arrow keys
        tabIndex={0}
        onKeyDown={walk.onKeyDown}
        className={styles["figure"]}
      >
        <span ref={square} className={styles["square"]} />
        <p aria-hidden="true" data-above={above} className={styles["point"]}>
          <span>{walk.text}</span>
        </p>
        <div aria-hidden="true">{children(room, walk)}</div>
      </div>
      <div className={styles["foot"]}>
        {beside}
        <ChartMenu
          words={{ title, reading, foot: `Lap Ledger, ${sayDate(asOf)}` }}
          table={table}
          fileName={fileName}
          asOf={asOf}
          box={box}
          isTableOpen={isTableOpen}
          onTable={() => setTableOpen(!isTableOpen)}
        />
      </div>
      <LiveRegion message={walk.spoken} />
      <p className={styles["reading"]}>{reading}</p>
      {note !== undefined && <p className={styles["note"]}>{note}</p>}
      {isTableOpen && <FiguresTable caption={title} table={table} />}
    </div>
  );
}

function FiguresTable({ caption, table }: { readonly caption: string; readonly table: ChartTable }) {
  return (
    <RuledTable
      caption={caption}
      captionHidden
      columns={table.columns}
      rows={table.rows.map(textRow)}
      balance={table.balance === undefined ? undefined : textRow(table.balance)}
    />
  );
}

function textRow({ cells, ...row }: ChartRow) {
  const texts = Object.entries(cells).map(([key, cell]) => [key, cell.text]);
  return { ...row, cells: Object.fromEntries(texts) as Record<string, string> };
}
