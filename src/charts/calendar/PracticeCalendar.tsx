import type { CalendarDate } from "#domain";
import { CalendarLines } from "../axes/CalendarLines.tsx";
import { calendarLines, strokesFor } from "../axes/calendarLines.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import { calendarTable, type PracticeDay, sayPracticeDay } from "./calendarTable.ts";

export interface PracticeCalendarProps extends ChartWords {
  /** Days with laps, oldest first. */
  readonly days: readonly PracticeDay[];
  /** First and last day looked at. */
  readonly from: CalendarDate;
  readonly to: CalendarDate;
}

const mostMonths = 24;

/** A line a month, a column a day, each day's laps as tally strokes in fives with their number under them. */
export function PracticeCalendar({ days, from, to, ...words }: PracticeCalendarProps) {
  const lapsAStroke = strokesFor(days);
  return (
    <ChartFrame
      {...words}
      table={calendarTable(days)}
      series={[
        {
          name: "Days",
          points: days.map((day, index) => ({ x: index, y: day.laps, text: sayPracticeDay(day) })),
        },
      ]}
      note={sayStrokes(lapsAStroke, monthsBetween(from, to))}
    >
      {(room, walk) => (
        <CalendarLines
          lines={calendarLines({ days, from, to, isHalved: room.width < 36 * room.em, mostMonths })}
          lapsAStroke={lapsAStroke}
          walkedDate={walk.point === undefined ? undefined : days[walk.point.x]?.date}
          room={room}
        />
      )}
    </ChartFrame>
  );
}

function sayStrokes(lapsAStroke: number, months: number): string {
  const strokes =
    lapsAStroke === 1 ? "A stroke is a lap" : `A stroke is ${lapsAStroke} laps, the last one perhaps fewer`;
  const left =
    months > mostMonths
      ? ` The last ${mostMonths} of ${months} months are drawn; the table has every day.`
      : "";
  return `${strokes}, five make a bundle.${left}`;
}

function monthsBetween(from: CalendarDate, to: CalendarDate): number {
  const month = (date: CalendarDate) => Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7));
  return month(to) - month(from) + 1;
}
