import { type RefObject, useLayoutEffect, useRef } from "react";
import type { PlannedRun } from "#domain";

/** A line that was moved, and the way it went. */
export interface MovedLine {
  readonly line: PlannedRun;
  readonly way: "up" | "down";
}

/**
 * Where the focus goes when the lines of a plan change under it: along with a line that was moved, to the same button or at an end
 * of the plan to the other one; to the line that came into the place of one that is gone.
 */
export function useFocusInLines(list: RefObject<HTMLElement | null>, lines: readonly PlannedRun[]) {
  const next = useRef<MovedLine | number>(undefined);
  const seen = useRef(lines);
  useLayoutEffect(() => {
    if (seen.current === lines) return;
    seen.current = lines;
    const wanted = next.current;
    next.current = undefined;
    const rows = [...(list.current?.children ?? [])];
    if (typeof wanted === "number") {
      const row = rows[Math.min(wanted, rows.length - 1)];
      row?.querySelector<HTMLElement>("button")?.focus();
    } else if (wanted !== undefined) {
      const row = rows.find((one) => one.getAttribute("data-line") === wanted.line.id);
      const button = (way: string) => row?.querySelector<HTMLElement>(`[data-way="${way}"]`);
      (button(wanted.way) ?? button(wanted.way === "up" ? "down" : "up"))?.focus();
    }
  });
  return {
    onMoved: (moved: MovedLine) => {
      next.current = moved;
    },
    onGone: (index: number) => {
      next.current = index;
    },
  };
}
