import type { Corner } from "./rows.ts";

/**
 * Corners in lap order, with all that another list knows and they do not: whole corners, and of a corner that is in both
 * whatever is not known of it. What is known already stays.
 */
export function fillCorners(known: readonly Corner[], other: readonly Corner[]): Corner[] {
  const corners = new Map(other.map((corner) => [corner.number, corner]));
  for (const corner of known) corners.set(corner.number, filled(corner, corners.get(corner.number)));
  return [...corners.values()].sort((a, b) => a.number - b.number);
}

function filled(corner: Corner, other: Corner | undefined): Corner {
  if (other === undefined) return corner;
  const { after, afterLength, kerbs, ...rest } = other;
  // The straight is one fact in two fields: a length from there says nothing of a straight named here.
  const straight = corner.after === undefined && corner.afterLength === undefined;
  return {
    ...rest,
    ...(straight && after !== undefined && { after }),
    ...(straight && afterLength !== undefined && { afterLength }),
    ...corner,
    ...(kerbs && { kerbs: { ...kerbs, ...corner.kerbs } }),
  };
}
