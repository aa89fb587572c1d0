import type { CalendarDate, Car, Combo, Id, Layout, Track } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { namingRows } from "./namingRows.ts";
import { isLive } from "./ranges.ts";

/** A combo with all that names it. */
export interface ComboWithNames {
  readonly combo: Combo;
  readonly car: Car;
  readonly track: Track;
  readonly layout: Layout;
}

/** Every combo with its names; no session, run or lap is read. One whose car, track or layout is gone is left out. */
export async function combosWithNames(book: ReadOnlyLogbook): Promise<ComboWithNames[]> {
  const { comboRows, carOf, trackOf, layoutOf } = await namingRows(book);
  return comboRows.filter(isLive).flatMap((combo) => {
    const layout = layoutOf.get(combo.layoutId);
    return named(combo, carOf.get(combo.carId), layout && trackOf.get(layout.trackId), layout);
  });
}

/** One combo with its names; undefined when it is not there. */
export async function comboWithNames(book: ReadOnlyLogbook, id: Id): Promise<ComboWithNames | undefined> {
  const combo = await book.tables.combos.get(id);
  if (combo === undefined || !isLive(combo)) return undefined;
  const [car, layout] = await Promise.all([
    book.tables.cars.get(combo.carId),
    book.tables.layouts.get(combo.layoutId),
  ]);
  const track = layout && (await book.tables.tracks.get(layout.trackId));
  return named(combo, car, track, layout)[0];
}

function named(
  combo: Combo,
  car: Car | undefined,
  track: Track | undefined,
  layout: Layout | undefined,
): ComboWithNames[] {
  return car && track && layout ? [{ combo, car, track, layout }] : [];
}

/**
 * When each of these combos was last driven: the start of its newest session before `until` (epoch ms), from which on
 * sessions are dated after tomorrow; 0 where it has only such. Reads keys only, one for each session.
 */
export async function lastDriven(
  book: ReadOnlyLogbook,
  comboIds: readonly Id[],
  until: number,
): Promise<Map<Id, number>> {
  const keys: unknown = await book.digests.orderBy("[comboId+startedAt]").keys();
  const newest = new Map<Id, number>();
  for (const [comboId, at] of keys as readonly (readonly [Id, number])[])
    newest.set(comboId, at < until ? at : (newest.get(comboId) ?? 0));
  return new Map(
    comboIds.flatMap((id) => {
      const at = newest.get(id);
      return at === undefined ? [] : [[id, at] as const];
    }),
  );
}

/**
 * The day each combo was last driven on, as its newest session before `until` (epoch ms) has it: where that was driven,
 * not where this device is now. Reads keys, and one session for each combo.
 */
export async function daysDriven(book: ReadOnlyLogbook, until: number): Promise<Map<Id, CalendarDate>> {
  const inOrder = () => book.digests.orderBy("[comboId+startedAt]");
  const [keys, ids] = await Promise.all([inOrder().keys(), inOrder().primaryKeys()]);
  const newest = new Map(
    (keys as unknown as readonly (readonly [Id, number])[]).flatMap(([comboId, at], index) =>
      at < until ? [[comboId, ids[index]] as const] : [],
    ),
  );
  const sessions = await book.tables.sessions.bulkGet([...newest.values()].filter((id) => id !== undefined));
  return new Map(sessions.flatMap((session) => (session ? [[session.comboId, session.date] as const] : [])));
}

/** How many sessions of each combo began from `since` (epoch ms) until before `until`. Reads keys only, one for each session. */
export async function sessionsSince(
  book: ReadOnlyLogbook,
  since: number,
  until: number,
): Promise<Map<Id, number>> {
  const keys: unknown = await book.digests.orderBy("[comboId+startedAt]").keys();
  const counts = new Map<Id, number>();
  for (const [comboId, startedAt] of keys as readonly (readonly [Id, number])[])
    if (startedAt >= since && startedAt < until) counts.set(comboId, (counts.get(comboId) ?? 0) + 1);
  return counts;
}
