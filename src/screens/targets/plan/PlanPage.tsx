import { preferences, sessionsOpen } from "#db";
import type { Id, Preferences } from "#domain";
import { askedCombo, type DrivenCombo, useCombos, useOtherCombos, useRows, useUntil } from "#live";
import { goTo, printAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { NoCombo } from "#ui/NoCombo.tsx";
import { PickOther } from "#ui/PickOther.tsx";
import { ComboPlan } from "./ComboPlan.tsx";
import styles from "./Plan.module.css";

/** The plan of the next session with the combo the address names, else with the one driven last. */
export function PlanPage({ comboId }: { readonly comboId: Id | undefined }) {
  const combos = useCombos();
  const chosen = useRows(preferences, []);
  if (combos === undefined || chosen === undefined) return <p>Opening the plan</p>;
  const combo = askedCombo(combos, comboId);
  if (combo === undefined)
    return (
      <div className={styles["screen"]}>
        <NoCombo
          isAsked={combos.length > 0}
          title="No combo yet"
          another={{
            says: "The plan for another combo",
            href: printAddress({ place: "targets", part: "plan" }),
          }}
        >
          A plan is for one combo, and there is none yet. Begin a session on{" "}
          <a href={printAddress({ place: "log" })}>Log</a>; the next one can then be planned here.
        </NoCombo>
      </div>
    );
  return <OfCombo combo={combo} combos={combos} preferences={chosen} />;
}

interface OfComboProps {
  readonly combo: DrivenCombo;
  readonly combos: readonly DrivenCombo[];
  readonly preferences: Preferences;
}

function OfCombo({ combo, combos, preferences: chosen }: OfComboProps) {
  const others = useOtherCombos(combos, combo.id);
  const until = useUntil();
  const open = useRows((book) => sessionsOpen(book, until), [until]);
  const session = open?.find(({ comboId }) => comboId === combo.id);
  const addressOf = (id: Id) => ({ place: "targets", comboId: id, part: "plan" }) as const;
  return (
    <div className={styles["screen"]}>
      <PickOther
        page="Plan"
        name={combo.name}
        of="Combo"
        opener="Another combo"
        others={others.map((other) => ({ ...other, href: printAddress(addressOf(other.id)) }))}
        onPick={({ id }) => goTo(addressOf(id))}
      />
      <p className={styles["ways"]}>
        <a href={printAddress({ place: "targets", comboId: combo.id })}>Its targets</a>
        {open !== undefined && session === undefined && (
          <a href={printAddress({ place: "log" })}>Start a session in Log</a>
        )}
      </p>
      <FaultBoundary key={combo.id} what="The plan">
        <ComboPlan combo={combo} preferences={chosen} session={session} />
      </FaultBoundary>
    </div>
  );
}
