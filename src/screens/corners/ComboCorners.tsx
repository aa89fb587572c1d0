import type { ComboWithNames } from "#db";
import { layoutName } from "#domain";
import { printAddress } from "#state/address.ts";
import { Columns } from "#ui/Columns.tsx";
import { Name } from "#ui/Name.tsx";
import styles from "./Corners.module.css";
import { CornerTable } from "./CornerTable.tsx";
import { LayoutPart } from "./LayoutPart.tsx";
import { RemarksPart } from "./RemarksPart.tsx";

/** One combo: its layout, the layout's corners, and the corners named in its laps. */
export function ComboCorners({ combo }: { readonly combo: ComboWithNames }) {
  const { layout, track, car } = combo;
  return (
    <>
      <p className={styles["where"]}>
        <span className={styles["name"]}>
          <Name>{layoutName(track, layout)}</Name> · <Name>{car.name}</Name>
        </span>
        <a className={styles["combo"]} href={printAddress({ place: "corners" })}>
          another combo
        </a>
      </p>
      <RemarksPart comboId={combo.combo.id} corners={layout.corners} />
      <Columns share={8}>
        <CornerTable layout={layout} />
        <LayoutPart layout={layout} />
      </Columns>
    </>
  );
}
