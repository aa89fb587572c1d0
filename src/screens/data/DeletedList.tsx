import { useEffect, useId, useRef, useState } from "react";
import { practiceDay, sayDate } from "#domain";
import { useLogbook, useRows, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { type DeletedThing, deletedThings } from "./deletedThings.ts";
import styles from "./LogbooksPart.module.css";

const atOnce = 20;

/** The deleted things of the open logbook, the last deleted first, twenty at a time. */
export function DeletedList() {
  const things = useRows(deletedThings, []);
  const [shown, setShown] = useState(atOnce);
  const box = useRef<HTMLDivElement>(null);
  const taken = useRef<number>(undefined);
  const count = things?.length;

  // What was brought back leaves the list with its button; the focus that it had goes on to what took its place.
  useEffect(() => {
    const isLost = document.activeElement === null || document.activeElement === document.body;
    if (taken.current === undefined || count === undefined || !isLost) return;
    const buttons = box.current?.querySelectorAll("button") ?? [];
    const next = buttons[Math.min(taken.current, buttons.length - 1)] ?? box.current;
    next?.focus();
  }, [count]);

  if (things === undefined) return <p>Looking through the runs</p>;
  const rest = things.length - shown;
  return (
    <div ref={box} tabIndex={-1}>
      {things.length === 0 && <p>Nothing deleted is left here.</p>}
      <ul className={styles["list"]}>
        {things.slice(0, shown).map((thing, index) => (
          <DeletedRow
            key={thing.id}
            thing={thing}
            onTaken={() => {
              taken.current = index;
            }}
          />
        ))}
      </ul>
      {rest > 0 && (
        <p>
          <Button size="between" onClick={() => setShown(shown + atOnce)}>
            Show {Math.min(rest, atOnce)} more of {rest}
          </Button>
        </p>
      )}
    </div>
  );
}

function DeletedRow({ thing, onTaken }: { readonly thing: DeletedThing; readonly onTaken: () => void }) {
  const { surroundings } = useLogbook();
  const write = useWrite();
  const id = useId();
  const { what, of, deletedAt, bringBack } = thing;
  const bringItBack = async () => {
    onTaken();
    await write(bringBack, { isUndoOffered: true });
  };
  return (
    <li className={styles["logbook"]}>
      <div id={id}>
        <div className={styles["title"]}>
          <Name>{what}</Name>
        </div>
        <div className={styles["about"]}>
          {of !== "" && <Name>{of}</Name>}
          {of !== "" && deletedAt !== undefined && " · "}
          {deletedAt !== undefined && `deleted ${sayDate(practiceDay(deletedAt, surroundings.zone(), 0))}`}
        </div>
      </div>
      <div className={styles["buttons"]}>
        <Button size="between" aria-describedby={id} onClick={() => void bringItBack()}>
          Bring back
        </Button>
      </div>
    </li>
  );
}
