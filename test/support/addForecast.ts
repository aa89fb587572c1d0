import { type Change, keepForecasts, type Logbook } from "#db";
import type { Forecast, Id, Stamped } from "#domain";

/** Keeps a forecast as if it had been made after a session of its own, where it names none. */
export async function addForecast(
  book: Logbook,
  row: Omit<Forecast, keyof Stamped>,
): Promise<Change & { readonly id: Id }> {
  const id = book.newId();
  const make = [{ madeAfter: book.newId(), ...row, id }];
  return { ...(await keepForecasts(book, { make, score: [], on: row.madeOn })), id };
}
