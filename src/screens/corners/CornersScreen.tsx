import { preferences } from "#db";
import type { Preferences } from "#domain";
import { askedCombo, type DrivenCombo, useCombos, useOtherCombos, useRows } from "#live";
import { type CornersAddress, goTo, printAddress, useAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { NoCombo } from "#ui/NoCombo.tsx";
import { PickOther } from "#ui/PickOther.tsx";
import { ComboCorners } from "./ComboCorners.tsx";
import styles from "./Corners.module.css";
import { CornersNav } from "./CornersNav.tsx";

/** The corners of the combo the address names, else of the one driven last: which to work on first, and what each is worth. */
export function CornersScreen() {
  const address = useAddress();
  const combos = useCombos();
  const chosen = useRows(preferences, []);
  if (address.place !== "corners") return null;
  if (combos === undefined || chosen === undefined) return <p>Opening Corners</p>;
  return <Corners address={address} combos={combos} preferences={chosen} />;
}

interface CornersProps {
  readonly address: CornersAddress;
  readonly combos: readonly DrivenCombo[];
  readonly preferences: Preferences;
}

function Corners({ address, combos, preferences: chosen }: CornersProps) {
  const { comboId } = address;
  const combo = askedCombo(combos, comboId);
  const others = useOtherCombos(combos, combo?.id ?? "");
  if (combo === undefined)
    return (
      <div className={styles["screen"]}>
        <NoCombo
          isAsked={combos.length > 0}
          title="No combo yet"
          another={{ says: "Corners of another combo", href: printAddress({ place: "corners" }) }}
        >
          Corners belong to the layout of a combo, and combos are made when a session begins. Begin one on{" "}
          <a href={printAddress({ place: "log" })}>Log</a>; then see here which corner to work on first, and
          what it is worth.
        </NoCombo>
      </div>
    );
  const addressOf = (id: string): CornersAddress => ({ place: "corners", comboId: id });
  return (
    <div className={styles["screen"]}>
      <PickOther
        name={combo.name}
        of="Combo"
        opener="Another combo"
        others={others.map((other) => ({ ...other, href: printAddress(addressOf(other.id)) }))}
        onPick={({ id }) => goTo(addressOf(id))}
      />
      <CornersNav address={{ ...address, comboId: combo.id }} />
      <FaultBoundary key={combo.id} what="The corners">
        <ComboCorners combo={combo} address={address} preferences={chosen} />
      </FaultBoundary>
    </div>
  );
}
