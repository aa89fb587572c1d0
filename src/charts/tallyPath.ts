const strokeHeight = 9;
const bundleHeight = 11;

/**
 * Tally strokes in bundles of five, four upright and one across, the bundles piled up from the ground.
 * @param strokes how many
 * @param middle middle of the pile, px
 * @param ground its foot, px
 * @param width of a bundle, px
 */
export function tallyPath(strokes: number, middle: number, ground: number, width: number): string {
  const parts: string[] = [];
  const gap = width / 5;
  const round = (px: number) => Math.round(px * 10) / 10;
  for (let stroke = 0; stroke < strokes; stroke++) {
    const foot = ground - Math.floor(stroke / 5) * bundleHeight;
    const inBundle = stroke % 5;
    parts.push(
      inBundle === 4
        ? `M${round(middle - width / 2)} ${foot - 2}L${round(middle + width / 2)} ${foot - strokeHeight + 2}`
        : `M${round(middle + (inBundle - 1.5) * gap)} ${foot}v${-strokeHeight}`,
    );
  }
  return parts.join("");
}
