import type { DrivenCombo } from "#live";
import { printAddress } from "#state/address.ts";
import styles from "./ComboTargets.module.css";

/** The ways from the targets of a combo to what else is told of it. */
export function ComboLinks({ combo: { id, name } }: { readonly combo: DrivenCombo }) {
  return (
    <nav aria-label={`More of ${name}`} className={styles["links"]}>
      <a href={printAddress({ place: "targets", comboId: id, part: "plan" })}>Plan</a>
      <a href={printAddress({ place: "targets", comboId: id, part: "race" })}>Race distance</a>
      <a href={printAddress({ place: "review", comboId: id, period: { kind: "12w" }, isAhead: true })}>
        Review
      </a>
    </nav>
  );
}
