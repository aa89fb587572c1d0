import { useId } from "react";
import { LineKey } from "../frame/LineKey.tsx";
import { Picture } from "../frame/Picture.tsx";
import { useRoom } from "../frame/useRoom.ts";
import styles from "./ForceWave.module.css";
import { layWave } from "./layWave.ts";

/** One turn at one gain. */
export interface WaveAtGain {
  /** "now 72 %". */
  readonly title: string;
  /** In percent of the limit, evenly spaced. */
  readonly forces: readonly number[];
  /** The same in words. */
  readonly label: string;
}

/** Room between two turns, px. */
const GAP = 16;

/** A turn at one gain, and beside it at another, on one scale: what lies over the limit is cut off. */
export function ForceWave({ waves }: { readonly waves: readonly WaveAtGain[] }) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const hatch = useId();
  const each = (width - GAP * (waves.length - 1)) / Math.max(1, waves.length);
  const highest = Math.max(112, ...waves.flatMap(({ forces }) => forces));
  return (
    <Picture box={box} square={square}>
      <ul className={styles["waves"]}>
        {waves.map(({ title, forces, label }, index) => {
          const { height, felt, lost, flat, limit, ground } = layWave(forces, each, highest);
          return (
            <li key={title}>
              <p className={styles["title"]}>{title}</p>
              <svg
                role="img"
                aria-label={label}
                width={each}
                height={height}
                viewBox={`0 0 ${each} ${height}`}
                className={styles["drawing"]}
              >
                <defs>
                  <pattern
                    id={`${hatch}${index}`}
                    width={5}
                    height={5}
                    patternUnits="userSpaceOnUse"
                    patternTransform="rotate(45)"
                  >
                    <path d="M0 0V5" className={styles["hatch"]} />
                  </pattern>
                </defs>
                <path d={`M0 ${ground}H${each}`} className={styles["ground"]} />
                {lost !== "" && <path d={lost} fill={`url(#${hatch}${index})`} className={styles["lost"]} />}
                <path d={`M0 ${limit}H${each}`} className={styles["limit"]} />
                <path d={felt} className={styles["felt"]} />
                {flat !== "" && <path d={flat} className={styles["flat"]} />}
                <text
                  x={each}
                  y={limit - em * 0.35}
                  textAnchor="end"
                  fontSize={em}
                  className={styles["words"]}
                >
                  limit
                </text>
              </svg>
            </li>
          );
        })}
      </ul>
      <LineKey>
        <li>
          <Sample of="felt" />
          force that you feel
        </li>
        {waves.some(({ forces }) => forces.some((force) => force > 100)) && (
          <li>
            <Sample of="lost" />
            cut off
          </li>
        )}
      </LineKey>
    </Picture>
  );
}

function Sample({ of }: { readonly of: "felt" | "lost" }) {
  return (
    <svg aria-hidden="true" width={28} height={12}>
      <path d="M0 6H28" className={styles[of]} />
    </svg>
  );
}
