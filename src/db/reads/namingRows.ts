import type { ReadOnlyLogbook } from "../logbook.ts";

/** The rows that name combos, deleted ones too, with those above the combos by their ids. */
export async function namingRows(book: ReadOnlyLogbook) {
  const { cars, tracks, layouts, combos } = book.tables;
  const [carRows, trackRows, layoutRows, comboRows] = await Promise.all([
    cars.toArray(),
    tracks.toArray(),
    layouts.toArray(),
    combos.toArray(),
  ]);
  return {
    carRows,
    trackRows,
    layoutRows,
    comboRows,
    carOf: new Map(carRows.map((row) => [row.id, row])),
    trackOf: new Map(trackRows.map((row) => [row.id, row])),
    layoutOf: new Map(layoutRows.map((row) => [row.id, row])),
  };
}
