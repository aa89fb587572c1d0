import type { DrivenCombo } from "#live";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { ComboLinks } from "./ComboLinks.tsx";
import styles from "./ComboTargets.module.css";

/** Combos that have no target: their plan and their races are told all the same. Nothing where each has one. */
export function WithoutTarget({ combos }: { readonly combos: readonly DrivenCombo[] }) {
  if (combos.length === 0) return null;
  return (
    <Part title="Without a target" ruled>
      <ul className={styles["without"]}>
        {combos.map((combo) => (
          <li key={combo.id} className={styles["head"]}>
            <Name>{combo.name}</Name>
            <ComboLinks combo={combo} />
          </li>
        ))}
      </ul>
    </Part>
  );
}
