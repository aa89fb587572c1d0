import { preferences } from "#db";
import type { CalendarDate, Id, Preferences } from "#domain";
import { type DrivenCombo, useCombos, useRows, useSessionsInDoubt, useToday } from "#live";
import { printAddress, type ReviewAddress, useAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { NoCombo } from "#ui/NoCombo.tsx";
import { SessionsInDoubt } from "#ui/SessionsInDoubt.tsx";
import { AroundReview } from "./AroundReview.tsx";
import { ComboPicker } from "./ComboPicker.tsx";
import { PeriodPicker } from "./PeriodPicker.tsx";
import { ReviewNav } from "./ReviewNav.tsx";
import { ReviewPage } from "./ReviewPage.tsx";
import styles from "./ReviewScreen.module.css";
import { useComboToOpen } from "./useComboToOpen.ts";
import { useRemembered } from "./useRemembered.ts";

/** The review of one combo, or what stands beside it: all combos, the search, one week. */
export function ReviewScreen() {
  const address = useAddress();
  if (address.place !== "review") return null;
  return address.part === undefined ? (
    <ReviewOfAddress asked={address} />
  ) : (
    <AroundReview address={address} />
  );
}

/** What the weeks say about the combo the address names, or about the one looked at last, or one with something to say. */
function ReviewOfAddress({ asked }: { readonly asked: ReviewAddress }) {
  const combos = useCombos();
  const chosen = useRows(preferences, []);
  if (combos === undefined || chosen === undefined) return <p>Opening Review</p>;
  return <ReviewOf asked={asked} combos={combos} preferences={chosen} />;
}

interface ReviewOfProps {
  readonly asked: ReviewAddress;
  readonly combos: readonly DrivenCombo[];
  readonly preferences: Preferences;
}

function ReviewOf({ asked, combos, preferences: chosen }: ReviewOfProps) {
  const today = useToday(chosen);
  const address = useRemembered(asked, (id) => combos.some((combo) => combo.id === id));
  const { comboId, period } = address;
  const unasked = useComboToOpen(combos, period, today);
  if (comboId === undefined && unasked === undefined && combos.length > 0) return <p>Opening Review</p>;
  const combo = comboId === undefined ? unasked : combos.find(({ id }) => id === comboId);
  if (combo === undefined)
    return (
      <div className={styles["screen"]}>
        <NoCombo
          isAsked={combos.length > 0}
          title="Nothing to review yet"
          another={{
            says: "Review another combo",
            href: printAddress({ place: "review", period: { kind: "12w" } }),
          }}
        >
          Review shows how your lap times change over weeks: it needs a session in the ledger.{" "}
          <a href={printAddress({ place: "log" })}>Start one in Log</a>
        </NoCombo>
      </div>
    );
  return (
    <div className={styles["screen"]}>
      <ReviewNav here="one" />
      <div className={styles["head"]}>
        <ComboPicker combo={combo} combos={combos} period={period} />
        <PeriodPicker comboId={combo.id} period={period} today={today} />
      </div>
      <Ahead comboId={combo.id} today={today} />
      <FaultBoundary key={combo.id} what="The review">
        <ReviewPage combo={combo} address={address} today={today} marginPercent={chosen.marginPercent} />
      </FaultBoundary>
    </div>
  );
}

function Ahead({ comboId, today }: { readonly comboId: Id; readonly today: CalendarDate }) {
  return <SessionsInDoubt sessions={useSessionsInDoubt(today, comboId)} today={today} />;
}
