import { editCorners, editLayout, type LayoutPatch } from "#db";
import { type Layout, layoutRanges } from "#domain";
import type { Measure } from "#entry";
import { useStoredText, useWrite } from "#live";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Part } from "#ui/Part.tsx";
import { metres } from "./cornerCells.ts";
import styles from "./Layout.module.css";
import { StoredMeasure } from "./StoredMeasure.tsx";
import { readSectorStarts, sectorOf, sectorStarts } from "./sectorStarts.ts";

const length = metres("Length of a lap", layoutRanges.length);
const sectors: Measure = {
  name: "Sectors the simulator times",
  unit: "",
  ...layoutRanges.sectors,
  isWhole: true,
};

/** What is known of the layout as a whole; it holds for every car on it. */
export function LayoutPart({ layout }: { readonly layout: Layout }) {
  const write = useWrite();
  const store = (patch: LayoutPatch) =>
    write((book) => editLayout(book, { layoutId: layout.id, patch, expected: layout }), {
      isUndoOffered: true,
    });
  return (
    <Part title="Layout" ruled aside="for every car on it">
      <div className={styles["fields"]}>
        <StoredMeasure
          draftKey={`layout length ${layout.id}`}
          measure={length}
          value={layout.length}
          onValue={(value) => store({ length: value })}
          hint="also 3.62 km"
        />
        <StoredMeasure
          draftKey={`layout sectors ${layout.id}`}
          measure={sectors}
          value={layout.sectors}
          onValue={(value) => store({ sectors: value })}
          hint="empty when it times none"
        />
        {layout.corners.length > 0 && layout.sectors !== 1 && <SectorStarts layout={layout} />}
      </div>
    </Part>
  );
}

/** Which corners begin a sector: fills in the sector of every corner at once. */
function SectorStarts({ layout: { id, corners, sectors: count } }: { readonly layout: Layout }) {
  const write = useWrite();
  const known = sectorStarts(corners);
  const { field, store, draft } = useStoredText({
    draftKey: `layout starts ${id}`,
    value: known,
    stored: known,
    read: (text) => {
      const reading = readSectorStarts(text, corners, count);
      return reading.ok ? { ok: true, value: reading.starts.join(", ") } : reading;
    },
    onStore: (text) => {
      const starts = text === "" ? undefined : text.split(", ").map(Number);
      return write(
        (book) =>
          editCorners(book, {
            layoutId: id,
            corners: corners.map(({ number }) => ({
              number,
              patch: { sector: starts && sectorOf(number, starts) },
            })),
          }),
        { isUndoOffered: true },
      );
    },
  });
  const first = count === undefined ? "the first one of sector 2, 3 …" : firstOnes(count);
  return (
    <>
      <Field
        label="A sector begins with corner"
        figures
        size="between"
        onKeyDown={(event) => event.key === "Enter" && store()}
        hint={`${first}; fills in the sector of every corner`}
        {...field}
      />
      <HalfTyped of={draft} />
    </>
  );
}

/** "two numbers for three sectors, such as 4, 8" */
function firstOnes(sectors: number): string {
  if (sectors === 2) return "the first corner of sector 2";
  if (sectors === 3) return "the first corners of sectors 2 and 3, such as 4, 8";
  return `the first corners of sectors 2 to ${sectors}, ${sectors - 1} numbers`;
}
