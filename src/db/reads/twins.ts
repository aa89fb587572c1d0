import { type Id, layoutName, nameKeys, type Stamped } from "#domain";
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
  /** The other's name, which may be another way of writing it. */
  readonly otherName: string;
  /** Their names are one; without it they differ in accents, and only the driver knows. */
  readonly isSure: boolean;
}

/**
 * Cars, tracks, layouts and combos that stand twice under the same name, or under names that are likely meant for the
 * same, tracks and cars first: joining those also joins the layouts and combos under them.
 */
export async function twins(book: ReadOnlyLogbook): Promise<Twins[]> {
  const { carRows, trackRows, layoutRows, comboRows, carOf, trackOf, layoutOf } = await namingRows(book);
  const called = (layoutId: Id) => {
    const layout = layoutOf.get(layoutId);
    const track = layout && trackOf.get(layout.trackId);
    return layout && track ? layoutName(track, layout) : "";
  };
  return [
    ...pairs("car", carRows, () => "", nameOf, nameOf),
    ...pairs("track", trackRows, () => "", nameOf, nameOf),
    ...pairs(
      "layout",
      layoutRows,
      ({ trackId }) => trackId,
      nameOf,
      ({ id }) => called(id),
    ),
    ...pairs(
      "combo",
      comboRows,
      ({ carId, layoutId }) => `${carId} ${layoutId}`,
      () => "",
      ({ carId, layoutId }) => `${called(layoutId)} · ${carOf.get(carId)?.name ?? ""}`,
    ),
  ];
}

const nameOf = ({ name }: { readonly name: string }) => name;

/**
 * @param within what both must have in common besides their names
 * @param called the name by which they are compared
 * @param say the name by which they are shown
 */
function pairs<R extends Stamped>(
  kind: Twins["kind"],
  rows: readonly R[],
  within: (row: R) => string,
  called: (row: R) => string,
  say: (row: R) => string,
): Twins[] {
  const [sameKey, likelyKey] = [nameKeys("same"), nameKeys("likely")];
  const eldest = new Map<string, R>();
  const take = (key: string, row: R) => {
    const elder = eldest.get(key);
    if (elder === undefined) eldest.set(key, row);
    return elder;
  };
  return rows
    .filter(isLive)
    .sort((a, b) => a.createdAt - b.createdAt || (a.id < b.id ? -1 : 1))
    .flatMap((row): Twins[] => {
      const name = called(row);
      const same = take(`same ${sameKey(name)} ${within(row)}`, row);
      const likely = same ?? take(`likely ${likelyKey(name)} ${within(row)}`, row);
      if (likely === undefined) return [];
      const isSure = same !== undefined;
      return [{ kind, keepId: likely.id, dropId: row.id, name: say(likely), otherName: say(row), isSure }];
    });
}
