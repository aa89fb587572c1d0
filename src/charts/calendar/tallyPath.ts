/** How bundles are laid out: their width and height, and how many stand beside each other, px. */
export interface TallySize {
  readonly width: number;
  readonly height: number;
  readonly abreast: number;
}

const gap = 4;

/** The bundles a column has room for. */
export function tallySize(column: number, em: number): TallySize {
  const width = Math.min(column * 0.8, em * 1.15);
  return { width, height: width * 0.75, abreast: Math.max(1, Math.floor((column * 0.95) / (width + gap))) };
}

/** Height of a pile of so many strokes, px. */
export function tallyHeight(strokes: number, { height, abreast }: TallySize): number {
  return Math.ceil(strokes / 5 / abreast) * (height + gap);
}

/**
 * Tally strokes in bundles of five, four upright and one across, row upon row from the ground.
 * @param strokes how many
 * @param middle middle of the pile, px
 * @param ground its foot, px
 */
export function tallyPath(strokes: number, middle: number, ground: number, size: TallySize): string {
  const { width, height, abreast } = size;
  const parts: string[] = [];
  const bundles = Math.min(abreast, Math.ceil(strokes / 5));
  const left = middle - (bundles * (width + gap) - gap) / 2;
  const round = (px: number) => Math.round(px * 10) / 10;
  for (let stroke = 0; stroke < strokes; stroke++) {
    const bundle = Math.floor(stroke / 5);
    const foot = round(ground - Math.floor(bundle / abreast) * (height + gap));
    const from = left + (bundle % abreast) * (width + gap);
    const inBundle = stroke % 5;
    parts.push(
      inBundle === 4
        ? `M${round(from)} ${round(foot - height * 0.15)}L${round(from + width)} ${round(foot - height * 0.85)}`
        : `M${round(from + ((inBundle + 0.5) * width) / 4)} ${foot}v${-round(height)}`,
    );
  }
  return parts.join("");
}
