import { bareName, type Id, layoutName, type Stamped } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { namingRows } from "./namingRows.ts";
import { isLive } from "./ranges.ts";

/** Two rows that name the same thing, as two devices make them that have not met yet. */
export interface Twins {
  readonly kind: "car" | "track" | "layout" | "combo";
  /** The elder, which the other goes into: every device chooses the same one. */
  readonly keepId: Id;
  readonly dropId: Id;
  /** Their name, as the elder has it. */
  readonly name: string;
}

/**
 * Cars, tracks, layouts and combos that stand twice under the same name, tracks and cars first: joining those also
 * joins the layouts and combos under them.
 */
export async function twins(book: ReadOnlyLogbook): Promise<Twins[]> {
  const { carRows, trackRows, layoutRows, comboRows, carOf, trackOf, layoutOf } = await namingRows(book);
  const called = (layoutId: Id) => {
    const layout = layoutOf.get(layoutId);
    const track = layout && trackOf.get(layout.trackId);
    return layout && track ? layoutName(track, layout) : "";
  };
  return [
    ...pairs("car", carRows, ({ name }) => bareName(name), nameOf),
    ...pairs("track", trackRows, ({ name }) => bareName(name), nameOf),
    ...pairs(
      "layout",
      layoutRows,
      ({ trackId, name }) => `${trackId} ${bareName(name)}`,
      ({ id }) => called(id),
    ),
    ...pairs(
      "combo",
      comboRows,
      ({ carId, layoutId }) => `${carId} ${layoutId}`,
      (combo) => {
        return `${called(combo.layoutId)} · ${carOf.get(combo.carId)?.name ?? ""}`;
      },
    ),
  ];
}

const nameOf = ({ name }: { readonly name: string }) => name;

function pairs<R extends Stamped>(
  kind: Twins["kind"],
  rows: readonly R[],
  keyOf: (row: R) => string,
  say: (row: R) => string,
): Twins[] {
  const eldest = new Map<string, R>();
  return rows
    .filter(isLive)
    .sort((a, b) => a.createdAt - b.createdAt || (a.id < b.id ? -1 : 1))
    .flatMap((row): Twins[] => {
      const keep = eldest.get(keyOf(row));
      if (keep) return [{ kind, keepId: keep.id, dropId: row.id, name: say(keep) }];
      eldest.set(keyOf(row), row);
      return [];
    });
}
