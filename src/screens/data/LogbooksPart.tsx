import { createLogbook, type ShelvedLogbook } from "#db";
import { useLogbook, useShelfWrite } from "#live";
import { Part } from "#ui/Part.tsx";
import { LogbookRow } from "./LogbookRow.tsx";
import styles from "./LogbooksPart.module.css";
import { TitleForm } from "./TitleForm.tsx";

/** The logbooks this browser holds: open another, rename, add, remove. */
export function LogbooksPart({ logbooks }: { readonly logbooks: readonly ShelvedLogbook[] }) {
  const { book } = useLogbook();
  const shelfWrite = useShelfWrite();
  return (
    <Part title="Logbooks" ruled aside={`${logbooks.length} in this browser`}>
      <ul className={styles["list"]}>
        {logbooks.map((logbook) => (
          <LogbookRow key={logbook.name} logbook={logbook} isOpen={logbook.name === book.name} />
        ))}
      </ul>
      <TitleForm
        label="Name of a new, empty logbook"
        button="Add a logbook"
        start=""
        onTitle={(title) => shelfWrite((shelf) => createLogbook(shelf, { title }))}
      />
    </Part>
  );
}
