import type { ComboWithNames } from "#db";
import { layoutName } from "#domain";
import { printAddress, useAddress } from "#state/address.ts";
import { Columns } from "#ui/Columns.tsx";
import { Name } from "#ui/Name.tsx";
import styles from "./Corners.module.css";
import { CornerTable } from "./CornerTable.tsx";
import { LayoutPart } from "./LayoutPart.tsx";
import { RemarksPart } from "./RemarksPart.tsx";
import { ReviewPage } from "./review/ReviewPage.tsx";

/** One combo: its layout, the layout's corners, and the corners named in its laps. */
export function ComboCorners({ combo }: { readonly combo: ComboWithNames }) {
  const { layout, track, car } = combo;
  const address = useAddress();
  if (address.place === "corners" && address.part === "review")
    return (
      <>
        <p className={styles["where"]}>
          <span className={styles["name"]}>
            <Name>{layoutName(track, layout)}</Name> · <Name>{car.name}</Name>
          </span>
          <a className={styles["combo"]} href={printAddress({ place: "corners", comboId: combo.combo.id })}>
            all corners
          </a>
        </p>
        <ReviewPage combo={combo} reviewId={address.reviewId} />
      </>
    );
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
