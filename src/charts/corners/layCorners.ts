import type { RemarkKind } from "#domain";
import type { CornerCounts } from "#words";

/** Marks on a corner's number, px. */
export interface CornerDrawing {
  readonly number: number;
  readonly all: number;
  /** Middle of its number, and the middle of the number's line. */
  readonly x: number;
  readonly y: number;
  readonly marks: readonly { readonly kind: RemarkKind; readonly x: number; readonly y: number }[];
  /** Where its count stands. */
  readonly top: number;
}

export interface CornersDrawing {
  readonly corners: readonly CornerDrawing[];
  /** How many remarks a mark stands for. */
  readonly each: number;
  readonly height: number;
}

/** The highest heap of marks; from then on a mark stands for more. */
const MOST_MARKS = 10;
/** The least room for a number, in em, and how high a mark is, px. */
const LEAST_WIDTH = 1.7;
/** Numbers further apart are no row any more. */
const MOST_WIDTH = 8;
const STEP = 16;

/**
 * Lays corners in lap order in lines as wide as there is room, a mark for each remark heaped on its number.
 * @param columns in lap order, those without a remark among them
 */
export function layCorners(columns: readonly CornerCounts[], width: number, em: number): CornersDrawing {
  const most = Math.max(...columns.map(allOf), 1);
  const each = Math.ceil(most / MOST_MARKS);
  const perLine = Math.max(1, Math.min(columns.length, Math.floor(width / (LEAST_WIDTH * em))));
  const step = Math.min(width / perLine, MOST_WIDTH * em);
  const lines = Array.from({ length: Math.ceil(columns.length / perLine) }, (_, line) =>
    columns.slice(line * perLine, (line + 1) * perLine),
  );
  let bottom = 0;
  const corners = lines.flatMap((line) => {
    const heap = Math.max(...line.map((column) => marksOf(column, each).length));
    const base = bottom + em * 1.5 + heap * STEP;
    bottom = base + em * 3;
    return line.map((column, place): CornerDrawing => {
      const x = (place + 0.5) * step;
      const kinds = marksOf(column, each);
      return {
        number: column.number,
        all: allOf(column),
        x,
        y: base + em,
        marks: kinds.map((kind, level) => ({ kind, x, y: base - (level + 0.5) * STEP })),
        top: base - kinds.length * STEP - em * 0.4,
      };
    });
  });
  return { corners, each, height: bottom };
}

/** All remarks of a corner. */
export function allOf({ counts }: CornerCounts): number {
  return counts.reduce((sum, { count }) => sum + count, 0);
}

/** The kinds of its marks from the bottom up; a kind that occurred has one at least. */
function marksOf({ counts }: CornerCounts, each: number): readonly RemarkKind[] {
  return counts.flatMap(({ kind, count }) => new Array<RemarkKind>(Math.ceil(count / each)).fill(kind));
}
