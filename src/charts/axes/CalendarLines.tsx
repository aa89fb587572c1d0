import type { CalendarDate } from "#domain";
import { tallyHeight, tallyPath, tallySize } from "../calendar/tallyPath.ts";
import styles from "../frame/Marks.module.css";
import { type Room, textWidth } from "../frame/useRoom.ts";
import type { CalendarLine } from "./calendarLines.ts";

interface CalendarLinesProps {
  readonly lines: readonly CalendarLine[];
  readonly lapsAStroke: number;
  readonly walkedDate: CalendarDate | undefined;
  readonly room: Room;
}

/** A day may be fuller: its number says so. */
const mostStrokes = 60;

/** The drawn calendar: every line as high as its fullest day needs. */
export function CalendarLines({ lines, lapsAStroke, walkedDate, room: { width, em } }: CalendarLinesProps) {
  const left = Math.max(...lines.map(({ label }) => textWidth(label, em))) + em;
  const columns = Math.max(...lines.map(({ first, last }) => last - first + 1));
  const column = (width - left - 2) / columns;
  const numbers = Math.min(em * 0.9, column * 0.85);
  const size = tallySize(column, em);
  const strokesOf = (laps: number) => Math.min(Math.ceil(laps / lapsAStroke), mostStrokes);
  const isHalved = columns < 28;
  let y = isHalved ? -em * 0.9 : em * 1.4;
  const placed = lines.map((line) => {
    const fullest = Math.max(5, ...line.days.map(({ laps }) => strokesOf(laps)));
    const height = (isHalved ? em * 2 : 0) + tallyHeight(fullest, size) + numbers * 1.3 + 6;
    y += height;
    return { ...line, top: y - height, base: y - numbers * 1.3 };
  });
  return (
    <svg width={width} height={y + 4} aria-hidden="true">
      {!isHalved && <DayMarks first={1} last={columns} y={em} left={left} column={column} em={em} />}
      {placed.map(({ id, label, first, last, days, top, base }) => (
        <g key={id}>
          {isHalved && (
            <DayMarks first={first} last={last} y={top + em * 1.9} left={left} column={column} em={em} />
          )}
          <text x={0} y={base} fontSize={em} className={styles["words"]}>
            {label}
          </text>
          <path d={`M${left} ${base + 1.5}h${(last - first + 1) * column}`} className={styles["ruled"]} />
          {days.map(({ day, date, laps }) => {
            const x = left + (day - first) * column;
            return (
              <g key={date}>
                <path
                  d={tallyPath(strokesOf(laps), x + column / 2, base, size)}
                  className={styles["tally"]}
                />
                <text
                  x={x + column / 2}
                  y={base + numbers * 1.15}
                  textAnchor="middle"
                  fontSize={numbers}
                  className={styles["wordsInk"]}
                >
                  {laps}
                </text>
                <g data-passing="">
                  {date === walkedDate && (
                    <path d={`M${x} ${base + numbers * 1.35}h${column}`} className={styles["walked"]} />
                  )}
                </g>
              </g>
            );
          })}
        </g>
      ))}
    </svg>
  );
}

interface DayMarksProps {
  readonly first: number;
  readonly last: number;
  readonly y: number;
  readonly left: number;
  readonly column: number;
  readonly em: number;
}

/** The first of the columns' days and every fifth, by number: above all months, or where they take two lines above each line. */
function DayMarks({ first, last, y, left, column, em }: DayMarksProps) {
  const days = [first, ...[5, 10, 15, 20, 25, 30].filter((day) => day > first + 1 && day <= last)];
  return days.map((day) => (
    <text
      key={day}
      x={left + (day - first + 0.5) * column}
      y={y}
      textAnchor="middle"
      fontSize={em * 0.9}
      className={styles["words"]}
    >
      {day}
    </text>
  ));
}
