import { forecasts, keepForecasts, preferences, sessionsOpen, targets } from "#db";
import { practiceDay } from "#domain";
import type { OpenLogbook } from "./logbookContext.ts";

/**
 * Keeps what is to be said of the targets now, and scores what was said once its date has passed. Asks only about combos of
 * which something can be due. While a session is open nothing is done: between laps nothing heavy is asked. Throws LedgerFault.
 */
export async function keepForecastsDue({
  book,
  ask,
  surroundings: { clock, zone },
}: Pick<OpenLogbook, "book" | "ask" | "surroundings">): Promise<void> {
  const [open, chosen, wanted, said] = await Promise.all([
    sessionsOpen(book),
    preferences(book),
    targets(book),
    forecasts(book),
  ]);
  if (open.length > 0) return;
  const today = practiceDay(clock(), zone(), chosen.dayStartsAt);
  const due = new Set(
    [
      ...wanted.filter(({ archivedAt, by = "" }) => archivedAt === undefined && by > today),
      ...said.filter(({ reached, by }) => reached === undefined && by < today),
    ].map(({ comboId }) => comboId),
  );
  for (const comboId of due) {
    const { make, score } = await ask(book, "forecastsDue", { comboId, today });
    if (make.length > 0 || score.length > 0) await keepForecasts(book, { make, score, on: today });
  }
}
