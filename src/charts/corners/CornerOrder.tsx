import { betweenParts } from "#domain";
import { Name } from "#ui/Name.tsx";
import styles from "./CornerOrder.module.css";

/** A corner worth something: ms a lap, least, most likely and most, and what stands beside its bar. */
export interface OrderedCorner {
  readonly number: number;
  readonly name: string | undefined;
  readonly href: string;
  readonly worth: { readonly low: number; readonly mid: number; readonly high: number };
  /** The part of `mid` that mistakes make. */
  readonly mistakesMs: number;
  /** "about 0.28 s" and its range. */
  readonly seconds: string;
  readonly range: string | undefined;
  /** "3 off, 1 spin", and what became of it since the review before. */
  readonly said: readonly string[];
}

/** Corners in order of seconds, the most first: each a bar with its range, mistakes there and the change since the last review. */
export function CornerOrder({ corners }: { readonly corners: readonly OrderedCorner[] }) {
  const most = Math.max(1, ...corners.map(({ worth }) => worth.high));
  const at = (ms: number) => `${(100 * ms) / most}%`;
  return (
    <div className={styles["box"]}>
      <ol className={styles["order"]} aria-label="Corners in order of seconds">
        {corners.map(({ number, name, href, worth, mistakesMs, seconds, range, said }) => (
          <li key={number} className={styles["row"]}>
            <a href={href} className={styles["corner"]}>
              <span className={styles["number"]}>Corner {number}</span>
              {name !== undefined && <Name>{name}</Name>}
            </a>
            <span aria-hidden="true" className={styles["picture"]}>
              <span className={styles["bar"]}>
                <span className={styles["unused"]} style={{ inlineSize: at(worth.mid - mistakesMs) }} />
                <span className={styles["mistakes"]} style={{ inlineSize: at(mistakesMs) }} />
              </span>
              {range !== undefined && (
                <span
                  className={styles["range"]}
                  style={{ marginInlineStart: at(worth.low), inlineSize: at(worth.high - worth.low) }}
                />
              )}
            </span>
            <span className={styles["seconds"]}>
              <strong>{seconds}</strong>{" "}
              {range !== undefined && <span className={styles["soft"]}>{range}</span>}
            </span>
            {said.length > 0 && <span className={styles["said"]}>{said.join(betweenParts)}</span>}
          </li>
        ))}
      </ol>
    </div>
  );
}
