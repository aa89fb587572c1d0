import { type CalendarDate, sayDate } from "#domain";
import { sayFarDate } from "#words";
import { Picture } from "../frame/Picture.tsx";
import { spreadLabels } from "../frame/spreadLabels.ts";
import { textWidth, useRoom } from "../frame/useRoom.ts";
import { type Chance, type ChanceDrawing, layChance, placeBeyond } from "./layChance.ts";
import { shortDate } from "./shortDate.ts";
import styles from "./Way.module.css";

interface ChanceLineProps {
  readonly chance: Chance;
}

const GAP = 2;

/**
 * A chance as twenty dots on a line of time, each one of twenty equally likely days, those in time filled. The words beside
 * it say the same.
 */
export function ChanceLine({ chance }: ChanceLineProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const drawing = layChance(chance, width);
  const { radius, levels, lineEnd, beyond, at } = drawing;
  const step = 2 * radius + GAP;
  const { by } = chance;
  const top = by === undefined ? 0 : em * 1.5;
  const line = top + Math.max(levels * step, em) + 4;
  const y = (level: number) => line - 4 - radius - level * step;
  const byAt = by === undefined ? undefined : at(by);
  return (
    <Picture box={box} square={square}>
      <svg aria-hidden="true" className={styles["drawing"]} width={width} height={line + em * 3.4}>
        <path d={`M0 ${line}H${lineEnd}`} className={styles["axis"]} />
        <path d={`M0.5 ${line - em}V${line}`} className={styles["axis"]} />
        {by !== undefined && byAt !== undefined && (
          <>
            <path d={`M${byAt} ${top}V${line}`} className={styles["wanted"]} />
            <text
              x={inside(byAt, `by ${shortDate(by)}`, width, em)}
              y={em}
              fontSize={em}
              className={styles["strong"]}
              textAnchor="middle"
            >
              by {shortDate(by)}
            </text>
          </>
        )}
        {drawing.dots.map(({ x, level, isInTime }) => (
          <circle
            key={`${x} ${level}`}
            cx={x}
            cy={y(level)}
            r={radius - 0.5}
            data-dot={isInTime ? "in time" : "late"}
            className={styles[isInTime ? "inTime" : "late"]}
          />
        ))}
        {beyond !== undefined &&
          Array.from({ length: beyond.count }, (_, index) => placeBeyond(index)).map(({ column, level }) => (
            <circle
              key={`${column} ${level}`}
              cx={beyond.from + column * step}
              cy={y(level)}
              r={radius - 0.5}
              data-dot="late"
              className={styles["late"]}
            />
          ))}
        <Labels chance={chance} drawing={drawing} width={width} line={line} em={em} />
      </svg>
    </Picture>
  );
}

interface LabelsProps extends ChanceLineProps {
  readonly drawing: ChanceDrawing;
  readonly width: number;
  readonly line: number;
  readonly em: number;
}

/** Under the line: the days by which so many have come, as many of them as there is room for. */
function Labels({ chance: { today, expected, likelyDays }, drawing, width, line, em }: LabelsProps) {
  const { low, mid, high } = expected;
  const said = [
    { count: 10, day: mid },
    { count: 18, day: high },
    { count: 2, day: low },
  ].filter((one): one is { count: number; day: CalendarDate } => one.day !== undefined);
  const linesOf = ({ count, day }: (typeof said)[number]) => [
    `${count === 20 ? "over 19" : count} in 20`,
    sayShort(day, today),
  ];
  const labels: Label[] = said
    .filter(({ count, day }) => !said.some((other) => other.count > count && other.day === day))
    // Where several of the twenty days are one, it is told how many have come by its end.
    .map(({ day }) => ({ day, count: likelyDays.filter((one) => one !== undefined && one <= day).length }))
    .filter(({ day }) => day <= drawing.last)
    .map((one) => ({ x: drawing.at(one.day), lines: linesOf(one) }));
  const { beyond } = drawing;
  const far = said.find(({ day }) => day > drawing.last);
  if (beyond)
    labels.splice(1, 0, {
      x: (beyond.from + width) / 2,
      lines: far === undefined ? ["later"] : linesOf(far),
    });
  labels.push({ x: 0, lines: ["today"] });
  const fitting = thatFit(labels, width, em).toSorted((a, b) => a.x - b.x);
  const middles = spreadLabels(
    fitting.map((label) => ({ y: label.x, height: widthOf(label, em) })),
    0,
    width,
  );
  return fitting.map(({ x, lines }, index) => {
    const middle = middles[index] ?? x;
    return (
      <g key={lines.join(" ")} fontSize={em} textAnchor="middle" className={styles["words"]}>
        <path d={`M${x} ${line}V${line + 4}L${middle} ${line + em * 0.7}`} className={styles["leader"]} />
        {lines.map((text, row) => (
          <text key={text} x={middle} y={line + em * (1.7 + row * 1.2)}>
            {text}
          </text>
        ))}
      </g>
    );
  });
}

interface Label {
  readonly x: number;
  readonly lines: readonly string[];
}

/** The first labels, as many as have room beside each other. */
function thatFit(labels: readonly Label[], width: number, em: number): readonly Label[] {
  let left = width;
  return labels.filter((label) => {
    left -= widthOf(label, em);
    return left >= 0;
  });
}

function widthOf({ lines }: Label, em: number): number {
  return Math.max(...lines.map((text) => textWidth(text, em))) + em;
}

function sayShort(day: CalendarDate, today: CalendarDate): string {
  const said = sayFarDate(day, today);
  return said === sayDate(day) ? shortDate(day) : said;
}

/** The middle of a text, moved so that the text stays inside. */
function inside(x: number, text: string, width: number, em: number): number {
  const half = textWidth(text, em) / 2 + 2;
  return Math.min(width - half, Math.max(half, x));
}
