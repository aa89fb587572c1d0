import type { Preferences, Session } from "#domain";
import { type DrivenCombo, usePlan, useToday } from "#live";
import { printAddress } from "#state/address.ts";
import { suggestionIn } from "#stats";
import { Notice } from "#ui/Notice.tsx";
import { DrillShares } from "./DrillShares.tsx";
import { FirstRun } from "./FirstRun.tsx";
import { LastPlan } from "./LastPlan.tsx";
import { OpenSession } from "./OpenSession.tsx";
import styles from "./Plan.module.css";
import { Templates } from "./Templates.tsx";
import { useShownPlan } from "./useShownPlan.ts";
import { WholePlan } from "./WholePlan.tsx";

interface ComboPlanProps {
  readonly combo: DrivenCombo;
  readonly preferences: Preferences;
  /** Of this combo, open now. */
  readonly session: Session | undefined;
}

/** The next session with a combo: the one suggestion, and the whole of it. */
export function ComboPlan({ combo, preferences, session }: ComboPlanProps) {
  const today = useToday(preferences);
  const next = usePlan(combo.id, today);
  const plan = useShownPlan(combo, next);
  if (next === undefined || plan === undefined) return <p>Working out the plan</p>;
  if (next.found === null)
    return (
      <Notice>
        <p>
          This combo is not in the logbook any more.{" "}
          <a href={printAddress({ place: "targets", part: "plan" })}>The plan for another combo</a>
        </p>
      </Notice>
    );
  const first = suggestionIn(plan.lines);
  const { facts, draft } = next.found;
  const context = { combo, preferences, plan, facts, draft, today };
  return (
    <div className={styles["screen"]} aria-busy={next.isRenewing}>
      {session !== undefined && <OpenSession session={session} plan={plan} />}
      <FirstRun context={context} line={plan.lines[first]} />
      <WholePlan context={context} first={first} />
      <Templates context={context} />
      <LastPlan context={context} />
      <DrillShares context={context} />
    </div>
  );
}
