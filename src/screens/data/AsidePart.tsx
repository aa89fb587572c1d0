import { useEffect, useRef, useState } from "react";
import { asideRows } from "#db";
import { useLogbook, useRows } from "#live";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { sayAsideCount } from "#words";
import { AsideItem } from "./AsideItem.tsx";
import styles from "./LogbooksPart.module.css";
import { saveAside } from "./saveAside.ts";

const atOnce = 20;

/** What could not stand in its table, row by row: what is wrong with it, and how it is mended; shown only where there is some. */
export function AsidePart() {
  const rows = useRows(asideRows, []);
  const { surroundings, entry } = useLogbook();
  const [shown, setShown] = useState(atOnce);
  const box = useRef<HTMLDivElement>(null);
  const count = rows?.length;

  // What was dealt with leaves the list with its buttons; the focus they had goes on to the list.
  useEffect(() => {
    const isLost = document.activeElement === null || document.activeElement === document.body;
    if (count !== undefined && box.current?.dataset["before"] !== undefined && isLost) box.current.focus();
    if (box.current !== null) box.current.dataset["before"] = String(count);
  }, [count]);

  if (rows === undefined || rows.length === 0) return null;
  const isOne = rows.length === 1;
  return (
    <Part title="Rows set aside" ruled>
      <p>
        {sayAsideCount(rows.length)}: what {isOne ? "it holds" : "they hold"} cannot be right, or could not be
        brought to this version of Lap Ledger. {isOne ? "It is" : "They are"} kept as stored, in backups too,
        but no page and no figure uses {isOne ? "it" : "them"}. Correct what is wrong, and{" "}
        {isOne ? "it stands" : "they stand"} in the logbook again.
      </p>
      <div ref={box} tabIndex={-1}>
        <ul className={styles["list"]}>
          {rows.slice(0, shown).map((aside) => (
            <AsideItem key={aside.id} aside={aside} />
          ))}
        </ul>
      </div>
      <p className={styles["buttons"]}>
        {rows.length > shown && (
          <Button size="between" onClick={() => setShown(shown + atOnce)}>
            Show {Math.min(rows.length - shown, atOnce)} more of {rows.length - shown}
          </Button>
        )}
        <Button size="between" onClick={() => void saveAside(surroundings, entry.title, rows)}>
          Save {isOne ? "it" : "them"} as a file
        </Button>
      </p>
    </Part>
  );
}
