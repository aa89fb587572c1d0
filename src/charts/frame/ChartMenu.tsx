import { type KeyboardEvent, type RefObject, useEffect, useId, useRef, useState } from "react";
import type { CalendarDate } from "#domain";
import { fileName as safeName, saveFile, writeCsv } from "#files";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { Notice } from "#ui/Notice.tsx";
import styles from "./ChartMenu.module.css";
import { type ChartTable, csvCells } from "./chartTable.ts";
import { drawnPng } from "./drawnPng.ts";
import { type DrawingWords, drawnSvg } from "./drawnSvg.ts";
import { nextItem } from "./nextItem.ts";

interface ChartMenuProps {
  readonly words: DrawingWords;
  readonly table: ChartTable;
  readonly fileName: string;
  readonly asOf: CalendarDate;
  /** The box the chart is drawn in. */
  readonly box: RefObject<HTMLElement | null>;
  readonly isTableOpen: boolean;
  readonly onTable: () => void;
}

interface Item {
  readonly word: string;
  readonly act: () => void;
}

/**
 * What else can be had of a chart, behind one quiet button: its figures as a table, a picture, a drawing, a file. A menu
 * button by the ARIA Authoring Practices: arrows, Home, End and first letters move, Escape and Tab close.
 */
export function ChartMenu(props: ChartMenuProps) {
  const { words, table, fileName, asOf, box, isTableOpen, onTable } = props;
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
  const items: readonly Item[] = [
    { word: isTableOpen ? "Hide the table" : "Show as a table", act: onTable },
    { word: "Save as PNG", act: () => void save("png", () => drawnPng(draw())) },
    {
      word: "Save as SVG",
      act: () => void save("svg", () => new Blob([draw().text], { type: "image/svg+xml" })),
    },
    {
      word: "Save as CSV",
      act: () => void save("csv", () => new Blob([writeCsv(csvCells(table))], { type: "text/csv" })),
    },
  ];
  return (
    <>
      <MenuButton of={words.title} items={items} />
      <LiveRegion message={problem} urgent />
      {problem !== "" && (
        <div className={styles["problem"]}>
          <Notice tone="caution">{problem}</Notice>
        </div>
      )}
    </>
  );
}

interface MenuButtonProps {
  /** What the menu is about. */
  readonly of: string;
  readonly items: readonly Item[];
}

function MenuButton({ of, items }: MenuButtonProps) {
  const [at, setAt] = useState<number>();
  const id = useId();
  const around = useRef<HTMLDivElement>(null);
  const opener = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const isOpen = at !== undefined;
  useEffect(() => {
    if (at !== undefined) list.current?.querySelectorAll<HTMLElement>("[role=menuitem]")[at]?.focus();
  }, [at]);
  useEffect(() => {
    if (!isOpen) return;
    const leave = ({ target }: Event) => {
      if (!around.current?.contains(target as Node)) setAt(undefined);
    };
    document.addEventListener("pointerdown", leave);
    document.addEventListener("focusin", leave);
    return () => {
      document.removeEventListener("pointerdown", leave);
      document.removeEventListener("focusin", leave);
    };
  }, [isOpen]);
  const close = () => {
    setAt(undefined);
    opener.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (at === undefined) {
      if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
      setAt(event.key === "ArrowDown" ? 0 : items.length - 1);
    } else if (event.key === "Tab") {
      // On from the button: Tab leads to what stands behind it.
      close();
      return;
    } else if (event.key === "Escape") close();
    else {
      const next = nextItem(
        event.key,
        at,
        items.map(({ word }) => word),
      );
      if (next === undefined) return;
      setAt(next);
    }
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: keys of the button and of the menu alike
    <div ref={around} className={styles["around"]} onKeyDown={onKeyDown}>
      <button
        ref={opener}
        type="button"
        aria-haspopup="menu"
        aria-expanded={isOpen}
        aria-controls={isOpen ? id : undefined}
        aria-label={`Table, files: ${of}`}
        onClick={() => setAt(isOpen ? undefined : 0)}
        className={styles["opener"]}
      >
        Table, files
      </button>
      {isOpen && (
        <div ref={list} id={id} role="menu" aria-label={`Of the chart: ${of}`} className={styles["menu"]}>
          {items.map(({ word, act }) => (
            <button
              key={word}
              type="button"
              role="menuitem"
              tabIndex={-1}
              className={styles["item"]}
              onClick={() => {
                close();
                act();
              }}
            >
              {word}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
