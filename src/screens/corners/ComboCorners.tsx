import type { ComboWithNames } from "#db";
import { layoutName } from "#domain";
import { type CornersAddress, printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import styles from "./Corners.module.css";
import { LayoutPage } from "./layout/LayoutPage.tsx";
import { RemarksPart } from "./RemarksPart.tsx";

interface ComboCornersProps {
  readonly combo: ComboWithNames;
  readonly address: CornersAddress;
}

/** One combo: the corners named in its laps, or what is known of its layout. */
export function ComboCorners({ combo, address }: ComboCornersProps) {
  const { layout, track, car } = combo;
  if (address.part === "layout") return <LayoutPage combo={combo} />;
  const comboId = combo.combo.id;
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
      <RemarksPart comboId={comboId} corners={layout.corners} />
      <p>
        <a className={styles["combo"]} href={printAddress({ place: "corners", comboId, part: "layout" })}>
          What is known of the layout
        </a>
      </p>
    </>
  );
}
