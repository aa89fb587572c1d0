import type { CalendarDate } from "#domain";
import { isDrivenSession, type WeekStatement, weekStatement } from "#stats";
import type { JobRun } from "./job.ts";
import { wholeBook } from "./wholeBook.ts";

export interface StatementDetails {
  readonly monday: CalendarDate;
  readonly today: CalendarDate;
}

/** A week, and where the nearest ones with a session lie. */
export interface Statement {
  readonly statement: WeekStatement;
  /** Days of the last session before the week and of the first one after it. */
  readonly before: CalendarDate | undefined;
  readonly after: CalendarDate | undefined;
}

/** The statement of one week. */
export const runStatement: JobRun<StatementDetails, Statement> = async (book, { monday, today }) => {
  const { combos, preferences } = await wholeBook(book, today);
  const statement = weekStatement({ monday, today, combos, preferences });
  const dates = combos
    .flatMap(({ digests }) => digests.filter(isDrivenSession).map(({ date }) => date))
    .sort();
  return {
    statement,
    before: dates.findLast((date) => date < monday),
    after: dates.find((date) => date > statement.sunday),
  };
};
