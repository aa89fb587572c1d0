import { inOrder, presentPage } from "#combo";
import { pagesOfCombo } from "#db";
import { type CalendarDate, type Id, isTimeKind, type Preferences, type Target } from "#domain";
import { type DrivenCombo, useFigures, useRows, useSessionsInDoubt } from "#live";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Name } from "#ui/Name.tsx";
import { SessionsInDoubt } from "#ui/SessionsInDoubt.tsx";
import { ComboLinks } from "./ComboLinks.tsx";
import styles from "./ComboTargets.module.css";
import { Practice } from "./Practice.tsx";
import { TargetRow } from "./TargetRow.tsx";
import type { FrontForm } from "./useTypedTarget.ts";

interface ComboTargetsProps {
  readonly combo: DrivenCombo;
  readonly targets: readonly Target[];
  readonly preferences: Preferences;
  readonly today: CalendarDate;
  readonly front: FrontForm;
  /** A target has gone from its place, and the focus with it. */
  readonly onGone: () => void;
  /** The target that has just been set: it is scrolled to and has the focus. */
  readonly fresh: Id | undefined;
  readonly onFresh: (targetId: Id) => void;
}

/** The targets of one combo: those that hold, and folded away those in the archive. */
export function ComboTargets(props: ComboTargetsProps) {
  const { combo, targets, preferences, today, front, onGone, fresh, onFresh } = props;
  const pages = useRows((book) => pagesOfCombo(book, combo.id), [combo.id]);
  const { value: review, isRenewing } = useFigures("comboReview", { comboId: combo.id, period: {}, today });
  const { value: where } = useFigures("whereToFind", { comboId: combo.id, today });
  const { value: ways } = useFigures("targetWays", { comboId: combo.id, today });
  const ahead = useSessionsInDoubt(today, combo.id);
  if (pages === undefined) return null;
  const page = presentPage(pages, today);
  const rows = (some: readonly Target[]) => (
    <ul className={styles["list"]} aria-busy={isRenewing}>
      {inOrder(some, page, today).map((target) => (
        <TargetRow
          key={target.id}
          target={target}
          combo={combo}
          state={review?.targets.find((state) => state.target.id === target.id)}
          way={ways?.find(({ targetId }) => targetId === target.id)}
          where={where?.find(({ targetId }) => targetId === target.id)}
          preferences={preferences}
          today={today}
          front={front}
          onGone={onGone}
          isFresh={target.id === fresh}
          onRenewed={onFresh}
        />
      ))}
    </ul>
  );
  const held = targets.filter(({ archivedAt }) => archivedAt === undefined);
  const archived = targets.filter(({ archivedAt }) => archivedAt !== undefined);
  const hasChance = review?.targets.some(
    ({ target, standing }) =>
      standing.kind === "open" && target.archivedAt === undefined && isTimeKind(target.kind),
  );
  return (
    <section aria-label={combo.name} className={styles["combo"]} data-wide={held.length > 1}>
      <div className={styles["head"]}>
        <h2>
          <Name>{combo.name}</Name>
        </h2>
        <ComboLinks combo={combo} />
      </div>
      <SessionsInDoubt sessions={ahead} today={today} />
      {hasChance && (
        <Practice comboId={combo.id} practice={combo.combo.practice} today={today} place="list" />
      )}
      {held.length === 0 ? <p className={styles["none"]}>No active target.</p> : rows(held)}
      {archived.length > 0 && (
        <div className={styles["archive"]}>
          <Disclosure
            title="Archive"
            answer={archived.length === 1 ? "1 target" : `${archived.length} targets`}
          >
            {rows(archived)}
          </Disclosure>
        </div>
      )}
    </section>
  );
}
