import { preferences } from "#db";
import type { Id, Preferences } from "#domain";
import { type DrivenCombo, useCombos, useRows, useToday } from "#live";
import { type Period, printAddress, useAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { AroundReview } from "./AroundReview.tsx";
import { ComboPicker } from "./ComboPicker.tsx";
import { PeriodPicker } from "./PeriodPicker.tsx";
import { ReviewNav } from "./ReviewNav.tsx";
import { ReviewPage } from "./ReviewPage.tsx";
import styles from "./ReviewScreen.module.css";

/** The review of one combo, or what stands beside it: all combos, the search, one week. */
export function ReviewScreen() {
  const address = useAddress();
  if (address.place !== "review") return null;
  return address.part === undefined ? <ReviewOfAddress {...address} /> : <AroundReview address={address} />;
}

interface ReviewOfAddressProps {
  readonly comboId?: Id;
  readonly period: Period;
}

/** What the weeks say about the combo the address names; without one, about the combo driven last. */
function ReviewOfAddress({ comboId, period }: ReviewOfAddressProps) {
  const combos = useCombos();
  const chosen = useRows(preferences, []);
  if (combos === undefined || chosen === undefined) return <p>Opening Review</p>;
  const combo = comboId === undefined ? combos[0] : combos.find(({ id }) => id === comboId);
  if (combo === undefined) return <NoCombo isAsked={comboId !== undefined && combos.length > 0} />;
  return <ReviewOf combo={combo} combos={combos} period={period} preferences={chosen} />;
}

interface ReviewOfProps {
  readonly combo: DrivenCombo;
  readonly combos: readonly DrivenCombo[];
  readonly period: Period;
  readonly preferences: Preferences;
}

function ReviewOf({ combo, combos, period, preferences: chosen }: ReviewOfProps) {
  const today = useToday(chosen);
  return (
    <div className={styles["screen"]}>
      <ReviewNav here="one" />
      <div className={styles["head"]}>
        <ComboPicker combo={combo} combos={combos} period={period} />
        <PeriodPicker comboId={combo.id} period={period} today={today} />
      </div>
      <FaultBoundary key={combo.id} what="The review">
        <ReviewPage combo={combo} period={period} today={today} marginPercent={chosen.marginPercent} />
      </FaultBoundary>
    </div>
  );
}

function NoCombo({ isAsked }: { readonly isAsked: boolean }) {
  return (
    <div className={styles["screen"]}>
      <h1>{isAsked ? "This combo is not there" : "Nothing to review yet"}</h1>
      {isAsked ? (
        <p>
          It may have been joined with another one, or belong to another logbook.{" "}
          <a href={printAddress({ place: "review", period: { kind: "12w" } })}>
            Review the combo driven last
          </a>
        </p>
      ) : (
        <p>
          Review shows how your lap times change over weeks: it needs a session in the ledger.{" "}
          <a href={printAddress({ place: "log" })}>Start one in Log</a>
        </p>
      )}
    </div>
  );
}
