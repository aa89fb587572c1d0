/** A point of a line, in any units. */
export interface PlainPoint {
  readonly x: number;
  readonly y: number;
}

/** Most points a chart draws. */
export const mostPoints = 600;

/**
 * Fewer points that keep a line's shape: largest-triangle-three-buckets (Sveinn Steinarsson, "Downsampling Time
 * Series for Visual Representation", University of Iceland, 2013). First and last point stay; from each bucket
 * between them the point that spans the largest triangle with its chosen left neighbour and the next bucket's mean.
 * @param points in order of x
 * @param limit 3 or more
 * @returns the same list when it is short enough
 */
export function thinPoints<P extends PlainPoint>(points: readonly P[], limit = mostPoints): readonly P[] {
  const first = points[0];
  const last = points.at(-1);
  if (points.length <= limit || first === undefined || last === undefined) return points;
  if (limit < 3) throw new RangeError(`thinning keeps at least 3 points, not ${limit}`);
  const size = (points.length - 2) / (limit - 2);
  const startOf = (bucket: number) => Math.floor(bucket * size) + 1;
  const kept: P[] = [first];
  let left: P = first;
  for (let bucket = 0; bucket < limit - 2; bucket++) {
    const candidates = points.slice(startOf(bucket), startOf(bucket + 1));
    const next = bucket === limit - 3 ? [last] : points.slice(startOf(bucket + 1), startOf(bucket + 2));
    const chosen = farthest(candidates, left, meanPoint(next));
    if (chosen === undefined) continue;
    kept.push(chosen);
    left = chosen;
  }
  kept.push(last);
  return kept;
}

function meanPoint(points: readonly PlainPoint[]): PlainPoint {
  const sum = points.reduce((so, point) => ({ x: so.x + point.x, y: so.y + point.y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

function farthest<P extends PlainPoint>(points: readonly P[], a: PlainPoint, c: PlainPoint): P | undefined {
  let chosen: P | undefined;
  let largest = -1;
  for (const b of points) {
    const area = Math.abs((a.x - c.x) * (b.y - a.y) - (a.x - b.x) * (c.y - a.y));
    if (area > largest) {
      largest = area;
      chosen = b;
    }
  }
  return chosen;
}
