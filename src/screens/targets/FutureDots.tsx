import styles from "./FutureDots.module.css";

const FUTURES = 20;

/** A chance as 20 futures, those that reach the target filled. The sentence above says the same in words. */
export function FutureDots({ chance }: { readonly chance: number }) {
  const reached = Math.round(chance * FUTURES);
  return (
    <div aria-hidden="true" className={styles["dots"]}>
      {Array.from({ length: FUTURES }, (_, index) => (
        <span key={String(index)} className={index < reached ? styles["reached"] : styles["missed"]} />
      ))}
    </div>
  );
}
