import { comboName, type Id, layoutName, sayDate, type TableName } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { combosWithNames } from "./combos.ts";
import { namingRows } from "./namingRows.ts";
import { isLive } from "./ranges.ts";
import { rigs } from "./rows.ts";

/** A row by the name under which the driver knows it. */
export interface NamedChoice {
  readonly id: Id;
  readonly name: string;
}

/**
 * The rows of a table to choose from: cars, tracks, layouts and combos by their names in order, sessions and rig settings by
 * their dates, the newest first. None of a table whose rows have no name.
 */
export async function namedChoices(book: ReadOnlyLogbook, table: TableName): Promise<NamedChoice[]> {
  if (table === "sessions") return sessionChoices(book);
  if (table === "rigs")
    return (await rigs(book))
      .reverse()
      .map(({ id, name, from }) => ({ id, name: `${name === "" ? "rig" : name}, from ${sayDate(from)}` }));
  return (await byName(book, table)).sort((a, b) => a.name.localeCompare(b.name, "en"));
}

async function byName(book: ReadOnlyLogbook, table: TableName): Promise<NamedChoice[]> {
  if (table === "combos")
    return (await combosWithNames(book)).map((one) => ({ id: one.combo.id, name: comboName(one) }));
  const { carRows, trackRows, layoutRows, trackOf } = await namingRows(book);
  if (table === "cars") return carRows.filter(isLive);
  if (table === "tracks") return trackRows.filter(isLive);
  if (table !== "layouts") return [];
  return layoutRows.filter(isLive).flatMap((layout) => {
    const track = trackOf.get(layout.trackId);
    return track === undefined ? [] : [{ id: layout.id, name: layoutName(track, layout) }];
  });
}

async function sessionChoices(book: ReadOnlyLogbook): Promise<NamedChoice[]> {
  const names = new Map((await combosWithNames(book)).map((one) => [one.combo.id, comboName(one)]));
  const sessions = await book.tables.sessions.orderBy("startedAt").reverse().filter(isLive).toArray();
  return sessions.map(({ id, date, comboId }) => ({
    id,
    name: `${sayDate(date)}, ${names.get(comboId) ?? "a combo that is gone"}`,
  }));
}
