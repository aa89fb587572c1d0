import { type RefObject, useEffect, useRef, useState } from "react";

/** The room a chart has. */
export interface Room {
  /** px */
  readonly width: number;
  /** Of the screen, px, as it was when the width last changed: a bar of the browser that comes and goes moves nothing. */
  readonly screenHeight: number;
  /** Size of the chart's text, px: 14 unless the reader has larger text. */
  readonly em: number;
  /** Too narrow for words at the lines' ends: they go under the chart. */
  readonly narrow: boolean;
}

const narrowBelow = 44; // em

/** Larger text would run out of the chart; the table behind it keeps the reader's full size. */
const fewestEms = 20;

/** Measures the box a chart is drawn in; 640 px wide where nothing can be measured. */
export function useRoom(): {
  readonly box: RefObject<HTMLDivElement | null>;
  /** An unseen square of one em in that box: it tells when the reader's text size changes. */
  readonly square: RefObject<HTMLSpanElement | null>;
  readonly room: Room;
} {
  const box = useRef<HTMLDivElement>(null);
  const square = useRef<HTMLSpanElement>(null);
  const [width, setWidth] = useState(640);
  const [screenHeight, setScreenHeight] = useState(0);
  const [textSize, setTextSize] = useState(14);
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const measure = () => {
      setTextSize(Number.parseFloat(getComputedStyle(element).fontSize) || 14);
      if (element.clientWidth > 0) setWidth(element.clientWidth);
      setScreenHeight(document.documentElement.clientHeight);
    };
    measure();
    if (typeof ResizeObserver === "undefined") return;
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    if (square.current !== null) observer.observe(square.current);
    return () => observer.disconnect();
  }, []);
  const em = Math.min(textSize, Math.max(14, width / fewestEms));
  return { box, square, room: { width, screenHeight, em, narrow: width < narrowBelow * em } };
}

/** Shares of the screen that a chart's plot deserves; its title, ticks and key come on top. */
const shares = {
  most: { narrow: 0.42, wide: 0.42 },
  more: { narrow: 0.34, wide: 0.3 },
} as const;

/** Plots are never lower than this, em. */
const lowestPlot = 13;

/** How high a plot is drawn, px: the chart a page is about `most`, the others `more`. */
export function plotHeight({ screenHeight, em, narrow }: Room, deserves: keyof typeof shares): number {
  const share = shares[deserves][narrow ? "narrow" : "wide"];
  return Math.round(Math.max(em * (deserves === "most" ? lowestPlot + 2 : lowestPlot), screenHeight * share));
}

/** Rough width of a line of text, px: enough to leave room for it before it is drawn. */
export function textWidth(text: string, em: number): number {
  return text.length * em * 0.53;
}
