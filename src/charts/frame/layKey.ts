import { textWidth } from "./useRoom.ts";

/** How a mark of the chart looks, and what it is. */
export interface KeyItem {
  readonly mark:
    | "box"
    | "bar"
    | "tick"
    | "point"
    | "whisker"
    | "dot"
    | "ring"
    | "walked"
    | "line"
    | "limit"
    | "solid"
    | "long"
    | "short"
    | "halfBand"
    | "paleBand";
  readonly text: string;
}

export interface LaidItem extends KeyItem {
  readonly x: number;
  readonly y: number;
}

/** Lays the key's items in rows of the given width. Heights are middles of rows, from 0 at the top, px. */
export function layKey(
  items: readonly KeyItem[],
  width: number,
  em: number,
): { readonly items: readonly LaidItem[]; readonly height: number } {
  const row = em * 1.6;
  let x = 0;
  let y = row / 2;
  const laid = items.map((item) => {
    const needed = em * 2.2 + textWidth(item.text, em);
    if (x > 0 && x + needed > width) {
      x = 0;
      y += row;
    }
    const place = { ...item, x, y };
    x += needed + em * 1.2;
    return place;
  });
  return { items: laid, height: items.length === 0 ? 0 : y + row / 2 };
}
