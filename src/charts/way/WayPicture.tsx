import { Picture } from "../frame/Picture.tsx";
import { spreadLabels } from "../frame/spreadLabels.ts";
import { textWidth, useRoom } from "../frame/useRoom.ts";
import { layWay, type Way, type WayDrawing } from "./layWay.ts";
import { shortDate } from "./shortDate.ts";
import styles from "./Way.module.css";

interface WayPictureProps {
  readonly way: Way;
  /** What is wanted, in words: "1:23.400". */
  readonly wanted: string;
  /** What is known last, in words: "level 1:24.13". */
  readonly end: string;
  /** The same in words, for those who do not see it. */
  readonly label: string;
}

const plotHeight = 132;
const gap = 12;

/**
 * The way to a target: what was known since it was set, today, the steps to come and the wanted value on its day. Of a time
 * lower is faster. Nothing is drawn where neither its start nor anything since is known.
 */
export function WayPicture({ way, wanted, end, label }: WayPictureProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  // What is known last stands beside its dot; of a way that is over the dot is where the picture ends.
  const isAtEnd = way.by !== undefined && way.by < way.today;
  const right = Math.max(...[wanted, isAtEnd ? end : ""].map((text) => textWidth(text, em))) + gap;
  const [top, bottom] = [em * 1.9, em * 1.9 + plotHeight];
  const frame = { left: 6, right: Math.max(60, width - right), top, bottom };
  const drawing = layWay(way, frame);
  if (drawing === undefined) return null;
  // High up its words stand behind today's, which else lie under them.
  const isBesideToday = drawing.now.y < top + em * 1.5;
  const nowTextAt = isBesideToday
    ? todayMiddle(drawing, em) + (textWidth("today", em) + em) / 2
    : drawing.now.x + gap;
  const [nowAt = 0, wantedAt = 0] = spreadLabels(
    [drawing.now, { y: drawing.wantedY }].map(({ y }) => ({ y, height: em * 1.25 })),
    top - em,
    bottom + em,
  );
  return (
    <Picture box={box} square={square}>
      <svg
        role="img"
        aria-label={label}
        className={styles["drawing"]}
        width={width}
        height={bottom + em * 2.2}
      >
        <Days way={way} drawing={drawing} top={top} bottom={bottom + em * 0.5} em={em} />
        <path d={`M${frame.left} ${drawing.wantedY}H${frame.right}`} className={styles["wanted"]} />
        <path d={drawing.ahead} className={styles["ahead"]} />
        <path d={drawing.known} className={styles[way.isStepped ? "best" : "level"]} />
        {drawing.steps.map(({ x, y }) => (
          <path key={`${x} ${y}`} d={`M${x} ${y - 6}V${y + 6}`} className={styles["step"]} />
        ))}
        <circle cx={drawing.first.x} cy={drawing.first.y} r={4} className={styles["ring"]} />
        <circle cx={drawing.now.x} cy={drawing.now.y} r={5} className={styles["now"]} />
        {drawing.goal && <circle cx={drawing.goal.x} cy={drawing.goal.y} r={6} className={styles["goal"]} />}
        <g fontSize={em} dominantBaseline="central">
          <text
            x={isAtEnd ? frame.right + gap : nowTextAt}
            y={isAtEnd ? nowAt : drawing.now.y - em}
            className={styles["words"]}
          >
            {end}
          </text>
          <text x={frame.right + gap} y={wantedAt} className={styles["strong"]}>
            {wanted}
          </text>
        </g>
      </svg>
    </Picture>
  );
}

/** Middle of today's name: over its rule, inside the picture. */
function todayMiddle({ todayAt }: WayDrawing, em: number): number {
  return Math.max(todayAt, textWidth("today", em) / 2);
}

interface DaysProps {
  readonly way: Way;
  readonly drawing: WayDrawing;
  readonly top: number;
  readonly bottom: number;
  readonly em: number;
}

/** Its setting, today and its date: a thin rule each, today's name above, the others' below. */
function Days({ way: { setOn, by, today }, drawing, top, bottom, em }: DaysProps) {
  const { setAt, todayAt, byAt } = drawing;
  const [set, on] = [`set ${shortDate(setOn)}`, by === undefined ? "" : `by ${shortDate(by)}`];
  const isOpen = by === undefined || by >= today;
  const half = textWidth(on, em) / 2;
  const onAt = byAt === undefined ? 0 : Math.max(byAt, setAt + textWidth(set, em) + gap + half);
  return (
    <g fontSize={em} className={styles["words"]}>
      <path d={`M${setAt} ${top}V${bottom}`} className={styles["day"]} />
      <text x={0} y={bottom + em}>
        {set}
      </text>
      {byAt !== undefined && (
        <>
          <path d={`M${byAt} ${top}V${bottom}`} className={styles["day"]} />
          <text x={onAt} y={bottom + em} textAnchor="middle">
            {on}
          </text>
        </>
      )}
      {isOpen && (
        <>
          <path d={`M${todayAt} ${top - 4}V${bottom}`} className={styles["day"]} />
          <text x={todayMiddle(drawing, em)} y={top - 4 - em * 0.35} textAnchor="middle">
            today
          </text>
        </>
      )}
    </g>
  );
}
