import { editLayout, type LayoutPatch } from "#db";
import { type Layout, layoutRanges } from "#domain";
import type { Measure } from "#entry";
import { useWrite } from "#live";
import { Part } from "#ui/Part.tsx";
import styles from "./Corners.module.css";
import { StoredMeasure } from "./StoredMeasure.tsx";

const length: Measure = { name: "Length of a lap", unit: "m", ...layoutRanges.length };
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
      </div>
    </Part>
  );
}
