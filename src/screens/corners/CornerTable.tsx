import { useRef, useState } from "react";
import { editCorner, editLayout } from "#db";
import type { Corner, Layout } from "#domain";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { Spoken } from "#ui/Spoken.tsx";
import { useFocusBack } from "#ui/useFocusBack.ts";
import { CornerEditor } from "./CornerEditor.tsx";
import styles from "./Corners.module.css";
import { type CornerMeasure, cornerMeasures, textsOf } from "./cornerFields.ts";
import { HowMany } from "./HowMany.tsx";

/** The button that opens a corner: the focus comes back to it. */
const idOf = (number: number) => `corner-${number}`;

/** The corners of a layout on ruled lines; a number opens its corner for editing in its place. */
export function CornerTable({ layout }: { readonly layout: Layout }) {
  const write = useWrite();
  const [edited, setEdited] = useState<number>();
  const adding = useRef<HTMLButtonElement>(null);
  useFocusBack(edited, (number) => document.getElementById(idOf(number)));
  const { corners } = layout;
  const next = (corners.at(-1)?.number ?? 0) + 1;
  const remove = async (number: number) => {
    const patch = { corners: corners.filter((corner) => corner.number !== number) };
    const edit = { layoutId: layout.id, patch, expected: layout };
    if (!(await write((book) => editLayout(book, edit), { isUndoOffered: true }))) return;
    setEdited(undefined);
    adding.current?.focus();
  };
  const add = async () => {
    const edit = { layoutId: layout.id, number: next, patch: {} };
    if (await write((book) => editCorner(book, edit), { isUndoOffered: true })) setEdited(next);
  };
  if (corners.length === 0)
    return (
      <Part title="Corners" ruled>
        <HowMany layout={layout} />
      </Part>
    );
  return (
    <Part title="Corners" ruled aside={corners.length === 1 ? "1 corner" : `${corners.length} corners`}>
      <table className={styles["table"]}>
        <caption>
          <Spoken>Corners of the layout</Spoken>
        </caption>
        <thead>
          <tr>
            <th scope="col">corner</th>
            <th scope="col">turns</th>
            <th scope="col">radius m</th>
            <th scope="col">width m</th>
            <th scope="col">angle °</th>
          </tr>
        </thead>
        <tbody>
          {corners.map((corner) =>
            corner.number === edited ? (
              <tr key={corner.number}>
                <td colSpan={5} className={styles["editing"]}>
                  <CornerEditor
                    layoutId={layout.id}
                    corner={corner}
                    onDone={() => setEdited(undefined)}
                    onRemove={() => void remove(corner.number)}
                  />
                </td>
              </tr>
            ) : (
              <CornerRow key={corner.number} corner={corner} onEdit={() => setEdited(corner.number)} />
            ),
          )}
        </tbody>
      </table>
      <p>
        <Button ref={adding} size="between" disabled={next > 999} onClick={() => void add()}>
          Add corner {next}
        </Button>
      </p>
    </Part>
  );
}

function CornerRow({ corner, onEdit }: { readonly corner: Corner; readonly onEdit: () => void }) {
  const { number, name, direction } = corner;
  const texts = textsOf(corner);
  return (
    <tr>
      <th scope="row">
        <button
          type="button"
          id={idOf(number)}
          aria-label={["Edit corner", number, name].filter((part) => part !== undefined).join(" ")}
          className={styles["open"]}
          onClick={onEdit}
        >
          <span className={styles["number"]}>{number}</span>
          {name !== undefined && (
            <span className={styles["corner"]}>
              <Name>{name}</Name>
            </span>
          )}
        </button>
      </th>
      <td>{direction}</td>
      {(Object.keys(cornerMeasures) as CornerMeasure[]).map((key) => (
        <td key={key}>{texts[key]}</td>
      ))}
    </tr>
  );
}
