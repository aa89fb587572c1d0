import type { RecordFifth } from "#stats";
import { sayFifth, TWENTY } from "#words";
import { Picture } from "../frame/Picture.tsx";
import { useRoom } from "../frame/useRoom.ts";
import styles from "./RecordPicture.module.css";

interface RecordPictureProps {
  readonly fifths: readonly RecordFifth[];
}

const ring = 8;
const dot = 4.5;

/**
 * What was said against what came, a line for each fifth of chance in which there are forecasts: a ring where the chances told
 * lay, a dot where the share that came true lies. A dot in its ring was said rightly.
 */
export function RecordPicture({ fifths }: RecordPictureProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const [left, right] = [ring + 2, width - ring - 2];
  const x = (share: number) => left + share * (right - left);
  const row = em * 3.4;
  const bottom = fifths.length * row + em * 0.4;
  return (
    <Picture box={box} square={square}>
      <svg role="img" aria-label={fifths.map(sayFifth).join("; ")} width={width} height={bottom + em * 1.9}>
        {fifths.map((fifth, index) => {
          const y = (index + 1) * row - em * 0.9;
          const { from, said, came } = fifth;
          return (
            <g key={from} data-fifth={from}>
              <text x={0} y={y - em * 1.1} fontSize={em} className={styles["words"]}>
                {sayFifth(fifth)}
              </text>
              <path d={`M${left} ${y}H${right}`} className={styles["axis"]} />
              <path d={`M${x(said)} ${y}H${x(came)}`} className={styles["apart"]} />
              <circle cx={x(said)} cy={y} r={ring} className={styles["said"]} />
              <circle cx={x(came)} cy={y} r={dot} className={styles["came"]} />
            </g>
          );
        })}
        <g fontSize={em} className={styles["soft"]}>
          {[0, 5, 10, 15, 20].map((chances) => (
            <g key={chances}>
              <path d={`M${x(chances / TWENTY)} ${bottom}v6`} className={styles["axis"]} />
              <text x={x(chances / TWENTY)} y={bottom + em * 1.6} textAnchor={endOf(chances)}>
                {chances === TWENTY ? `20 in ${TWENTY}` : chances}
              </text>
            </g>
          ))}
        </g>
      </svg>
    </Picture>
  );
}

/** The outermost numbers stay inside the picture. */
function endOf(chances: number): "start" | "middle" | "end" {
  return chances === 0 ? "start" : chances === TWENTY ? "end" : "middle";
}
