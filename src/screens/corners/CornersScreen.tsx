import { combosWithNames, lastDriven } from "#db";
import { useRows, useUntil } from "#live";
import { useAddress } from "#state/address.ts";
import { ComboCorners } from "./ComboCorners.tsx";
import { ComboList } from "./ComboList.tsx";
import styles from "./Corners.module.css";

/** The corners of a layout: what is known of them, and how often each was named in remarks. */
export function CornersScreen() {
  const address = useAddress();
  const comboId = address.place === "corners" ? address.comboId : undefined;
  const until = useUntil();
  const combos = useRows(
    async (book) => {
      const named = await combosWithNames(book);
      const driven = await lastDriven(
        book,
        named.map(({ combo }) => combo.id),
        until,
      );
      const at = (id: string) => driven.get(id) ?? 0;
      return named.sort((a, b) => at(b.combo.id) - at(a.combo.id) || (a.combo.id < b.combo.id ? -1 : 1));
    },
    [until],
  );
  const chosen = combos?.find(({ combo }) => combo.id === comboId);
  return (
    <div className={styles["screen"]}>
      <h1>Corners</h1>
      {combos &&
        (chosen && address.place === "corners" ? (
          <ComboCorners key={chosen.combo.id} combo={chosen} address={address} />
        ) : (
          <ComboList combos={combos} isMissing={comboId !== undefined} />
        ))}
    </div>
  );
}
