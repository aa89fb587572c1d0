import { formatLapTime } from "#domain";
import { Picture } from "../frame/Picture.tsx";
import { spreadLabels } from "../frame/spreadLabels.ts";
import { textWidth, useRoom } from "../frame/useRoom.ts";
import { layRace } from "./layRace.ts";
import styles from "./RacePicture.module.css";

interface RacePictureProps {
  /** Mean laps of equally likely races, ms, the fastest first. */
  readonly likely: readonly number[];
  /** Mean lap to be beaten, ms. */
  readonly toBeat: number | undefined;
}

/** A race to come as dots on a line of mean laps, each one of so many equally likely races; those that beat a mean lap filled. */
export function RacePicture({ likely, toBeat }: RacePictureProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const { radius, levels, dots, at } = layRace(likely, toBeat, width);
  const step = 2 * radius + 2;
  const top = toBeat === undefined ? 0 : em * 1.6;
  const line = top + levels * step + 4;
  const beat = toBeat === undefined ? undefined : { x: at(toBeat), text: `${formatLapTime(toBeat)} to beat` };
  const middle = Math.floor(likely.length / 2);
  const labels = [0, middle, likely.length - 1].flatMap((index) => {
    const ms = likely[index];
    return ms === undefined ? [] : [{ x: at(ms), text: formatLapTime(ms, 2) }];
  });
  const places = spreadLabels(
    labels.map(({ x, text }) => ({ y: x, height: textWidth(text, em) + em })),
    0,
    width,
  );
  return (
    <Picture box={box} square={square}>
      <svg aria-hidden="true" width={width} height={line + em * 2.2}>
        <path d={`M0 ${line}H${width}`} className={styles["axis"]} />
        {beat && (
          <g>
            <path d={`M${beat.x} ${top - 4}V${line}`} className={styles["wanted"]} />
            <text
              x={inside(beat.x, textWidth(beat.text, em), width)}
              y={em}
              fontSize={em}
              textAnchor="middle"
              className={styles["strong"]}
            >
              {beat.text}
            </text>
          </g>
        )}
        {dots.map(({ x, level, isFaster }) => (
          <circle
            key={`${x} ${level}`}
            cx={x}
            cy={line - 3 - radius - level * step}
            r={radius - 0.5}
            data-dot={isFaster ? "faster" : "slower"}
            className={styles[isFaster ? "faster" : "slower"]}
          />
        ))}
        <g fontSize={em} textAnchor="middle" className={styles["words"]}>
          {labels.map(({ x, text }, index) => (
            <g key={`${index} ${text}`}>
              <path
                d={`M${x} ${line}V${line + 4}L${places[index] ?? x} ${line + em * 0.6}`}
                className={styles["axis"]}
              />
              <text x={places[index] ?? x} y={line + em * 1.7}>
                {text}
              </text>
            </g>
          ))}
        </g>
      </svg>
    </Picture>
  );
}

/** The middle of a text, moved so that the text stays inside. */
function inside(x: number, wide: number, width: number): number {
  return Math.min(width - wide / 2 - 2, Math.max(wide / 2 + 2, x));
}
