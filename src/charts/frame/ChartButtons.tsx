import { type RefObject, useState } from "react";
import type { CalendarDate } from "#domain";
import { fileName as safeName, saveFile, writeCsv } from "#files";
import { Button } from "#ui/Button.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { Notice } from "#ui/Notice.tsx";
import styles from "./ChartFrame.module.css";
import { type ChartTable, csvCells } from "./chartTable.ts";
import { drawnPng } from "./drawnPng.ts";
import { type DrawingWords, drawnSvg } from "./drawnSvg.ts";

interface ChartButtonsProps {
  readonly words: DrawingWords;
  readonly table: ChartTable;
  readonly fileName: string;
  readonly asOf: CalendarDate;
  /** The box the chart is drawn in. */
  readonly box: RefObject<HTMLElement | null>;
  readonly isTableOpen: boolean;
  readonly tableId: string;
  readonly onTable: () => void;
}

/** Table, PNG, SVG, CSV. */
export function ChartButtons(props: ChartButtonsProps) {
  const { words, table, fileName, asOf, box, isTableOpen, tableId, onTable } = props;
  const [problem, setProblem] = useState("");

  const save = async (ending: "csv" | "svg" | "png", make: () => Blob | Promise<Blob>) => {
    try {
      saveFile(safeName(fileName, asOf, ending), await make());
      setProblem("");
    } catch (fault) {
      const reason = fault instanceof Error ? fault.message : String(fault);
      setProblem(`The ${ending.toUpperCase()} file could not be made: ${reason}.`);
    }
  };
  const draw = () => {
    const chart = box.current?.querySelector("svg");
    if (!chart) throw new Error("there is no chart on the page");
    return drawnSvg(chart, words);
  };

  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for form fields; these are buttons about one chart */}
      <div role="group" aria-label={`This chart: ${words.title}`} className={styles["buttons"]}>
        <Button aria-expanded={isTableOpen} aria-controls={tableId} onClick={onTable}>
          Table
        </Button>
        <Button onClick={() => save("png", () => drawnPng(draw()))}>PNG</Button>
        <Button onClick={() => save("svg", () => new Blob([draw().text], { type: "image/svg+xml" }))}>
          SVG
        </Button>
        <Button
          onClick={() => save("csv", () => new Blob([writeCsv(csvCells(table))], { type: "text/csv" }))}
        >
          CSV
        </Button>
      </div>
      <LiveRegion message={problem} urgent />
      {problem !== "" && <Notice tone="caution">{problem}</Notice>}
    </>
  );
}
