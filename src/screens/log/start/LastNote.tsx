import { sessionBefore } from "#db";
import { type Session, sayDay } from "#domain";
import { useRows } from "#live";
import { Name } from "#ui/Name.tsx";
import styles from "../LogScreen.module.css";

/** The note that the driver left for the next time with this combo, read before the first lap. */
export function LastNote({ session }: { readonly session: Session }) {
  const { comboId, startedAt } = session;
  const before = useRows((book) => sessionBefore(book, comboId, startedAt), [comboId, startedAt]);
  if (before === undefined || before.note.trim() === "") return null;
  return (
    <section aria-label="Your note from last time">
      <p className={styles["soft"]}>Your note from {sayDay(before.date)}</p>
      <blockquote className={styles["note"]}>
        <Name>{before.note}</Name>
      </blockquote>
    </section>
  );
}
