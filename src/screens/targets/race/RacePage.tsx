import { preferences } from "#db";
import type { Id, Preferences } from "#domain";
import { askedCombo, type DrivenCombo, useCombos, useRows, useToday } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { Race } from "./Race.tsx";
import styles from "./RacePage.module.css";

/** A race distance with one combo: the one of the address, else the one driven last. */
export function RacePage({ comboId }: { readonly comboId: Id | undefined }) {
  const combos = useCombos();
  const chosen = useRows(preferences, []);
  if (combos === undefined || chosen === undefined) return <p>Opening the race distance</p>;
  const combo = askedCombo(combos, comboId);
  return (
    <div className={styles["page"]}>
      <p className={styles["back"]}>
        <a href={printAddress({ place: "targets", ...(combo !== undefined && { comboId: combo.id }) })}>
          Back to Targets
        </a>
      </p>
      <h1>Race distance</h1>
      {combo === undefined ? (
        <p>
          {comboId === undefined
            ? "It is worked out from laps with a combo, and there is none yet."
            : "The combo of this address is not there."}
        </p>
      ) : (
        <OfCombo key={combo.id} combo={combo} preferences={chosen} />
      )}
    </div>
  );
}

interface OfComboProps {
  readonly combo: DrivenCombo;
  readonly preferences: Preferences;
}

function OfCombo({ combo, preferences: chosen }: OfComboProps) {
  const today = useToday(chosen);
  return (
    <>
      <p className={styles["soft"]}>
        <Name>{combo.name}</Name>
      </p>
      <Race comboId={combo.id} today={today} />
    </>
  );
}
