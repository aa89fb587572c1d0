import { pagesOfCombo, type ReadOnlyLogbook } from "#db";
import type { CalendarDate, Forecast, Id } from "#domain";
import { forecastOutcome, type JudgedForecast, type SessionDigest } from "#stats";

interface OutcomesQuestion {
  readonly comboId: Id;
  /** Of the combo. */
  readonly said: readonly Forecast[];
  /** Of the combo, on all its pages. */
  readonly driven: readonly SessionDigest[];
  readonly today: CalendarDate;
}

/** What came of the forecasts of a combo, in their order. */
export async function outcomesOf(
  book: ReadOnlyLogbook,
  { comboId, said, driven, today }: OutcomesQuestion,
): Promise<JudgedForecast[]> {
  const [pages, targets] = await Promise.all([
    pagesOfCombo(book, comboId),
    book.tables.targets.bulkGet(said.map(({ targetId }) => targetId)),
  ]);
  return said.map((forecast, index) => {
    const target = targets[index];
    return {
      forecast,
      target,
      outcome: forecastOutcome({ forecast, target, digests: driven, pages, today }),
    };
  });
}
