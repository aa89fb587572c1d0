import { spreadReading, spreadShares, spreadTitle } from "#words";
import type { Looked } from "./looked.ts";
import { NotYet } from "./NotYet.tsx";
import styles from "./SpreadPart.module.css";

/** Where the spread comes from: laps, runs or evenings, as bars whose lengths add up to all of it. */
export function SpreadPart({ looked: { review } }: { readonly looked: Looked }) {
  const { spread } = review;
  const [title, reading] = [spreadTitle(review), spreadReading(review)];
  if (!spread.known) return <NotYet title={title}>{reading}</NotYet>;
  return (
    <section className={styles["part"]}>
      <h3>{title}</h3>
      <p className={styles["reading"]}>{reading}</p>
      <dl className={styles["rows"]}>
        {spreadShares(spread.value).map(({ source, name, share }) => (
          <div key={source} className={styles["row"]}>
            <dt>{name}</dt>
            <dd className={styles["share"]}>{Math.round(share * 100)} %</dd>
            <dd aria-hidden="true" className={styles["ground"]}>
              <span className={styles["bar"]} style={{ inlineSize: `${100 * share}%` }} />
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
