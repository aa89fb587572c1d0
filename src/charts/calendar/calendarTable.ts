import { type CalendarDate, sayDate, sayDay } from "#domain";
import type { ChartTable } from "../frame/chartTable.ts";

/** Laps driven on one practice day. */
export interface PracticeDay {
  readonly date: CalendarDate;
  readonly laps: number;
  readonly sessions: number;
}

/** The days driven, oldest first. */
export function calendarTable(days: readonly PracticeDay[]): ChartTable {
  return {
    columns: [
      { key: "date", title: "day", csvTitle: "date", unbroken: true },
      { key: "sessions", title: "sessions", csvTitle: "sessions", figures: true },
      { key: "laps", title: "laps", csvTitle: "laps", figures: true, strong: true },
    ],
    rows: days.map(({ date, laps, sessions }) => ({
      id: date,
      cells: {
        date: { text: sayDate(date), value: date },
        sessions: { text: String(sessions), value: sessions },
        laps: { text: String(laps), value: laps },
      },
    })),
  };
}

/** "Tuesday 3 August: 21 laps, 1 session" */
export function sayPracticeDay({ date, laps, sessions }: PracticeDay): string {
  const many = (count: number, thing: string) => `${count} ${thing}${count === 1 ? "" : "s"}`;
  return `${sayDay(date)}: ${many(laps, "lap")}, ${many(sessions, "session")}`;
}
