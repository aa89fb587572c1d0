import { lapsInOrder, type RemarkKind, type Run } from "#domain";

/** How often one corner was named, by remark. */
export interface NamedCorner {
  readonly number: number;
  readonly counts: ReadonlyMap<RemarkKind, number>;
  readonly all: number;
}

export interface CornerRemarks {
  /** Laps written down one by one that were looked at, the driver's own. */
  readonly laps: number;
  /** The corner named most often first. */
  readonly corners: readonly NamedCorner[];
}

/** Counts the remarks that name a corner, in the laps of runs the driver drove. */
export function cornerRemarks(runs: readonly Run[]): CornerRemarks {
  const laps = runs.filter(({ guest }) => guest === undefined).flatMap(lapsInOrder);
  const named = new Map<number, Map<RemarkKind, number>>();
  for (const { remarks } of laps)
    for (const { kind, corner } of remarks) {
      if (corner === undefined) continue;
      const counts = named.get(corner) ?? new Map<RemarkKind, number>();
      named.set(corner, counts.set(kind, (counts.get(kind) ?? 0) + 1));
    }
  const corners = [...named].map(([number, counts]) => ({
    number,
    counts,
    all: [...counts.values()].reduce((sum, count) => sum + count, 0),
  }));
  return { laps: laps.length, corners: corners.sort((a, b) => b.all - a.all || a.number - b.number) };
}
