import type { CalendarDate } from "#domain";
import { useFigures } from "#live";
import { printAddress } from "#state/address.ts";
import { sayRecordInShort } from "#words";
import styles from "./RecordPage.module.css";

/** The way to the app's own record, with what it comes to in a few words; nothing where no chance was ever kept. */
export function RecordLine({ today }: { readonly today: CalendarDate }) {
  const { value: own } = useFigures("ownRecord", { today });
  if (own === undefined || own.targets.length === 0) return null;
  return (
    <p>
      <a className={styles["link"]} href={printAddress({ place: "targets", part: "record" })}>
        What became of the chances
      </a>
      : {sayRecordInShort(own.against)}
    </p>
  );
}
