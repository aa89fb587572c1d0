import { Suspense, useRef, useState } from "react";
import { preferences, targets } from "#db";
import type { Id, Preferences, Target } from "#domain";
import { type DrivenCombo, useCombos, useForecastsKept, useRows, useToday } from "#live";
import { goTo, printAddress, useAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { useFocusBack } from "#ui/useFocusBack.ts";
import { chanceMeaning } from "#words";
import { ComboTargets } from "./ComboTargets.tsx";
import { RecordLine } from "./record/RecordLine.tsx";
import { TargetForm } from "./TargetForm.tsx";
import styles from "./TargetsScreen.module.css";
import { useTypedTarget } from "./useTypedTarget.ts";
import { WithoutTarget } from "./WithoutTarget.tsx";

const PlanPage = laterPart(async () => (await import("./plan/PlanPage.tsx")).PlanPage);
const RacePage = laterPart(async () => (await import("./race/RacePage.tsx")).RacePage);
const RecordPage = laterPart(async () => (await import("./record/RecordPage.tsx")).RecordPage);

/** The targets of all combos or of one, or the page of what belongs to them that the address names. */
export function TargetsScreen() {
  const address = useAddress();
  if (address.place !== "targets") return null;
  const { part, comboId } = address;
  if (part !== undefined)
    return (
      <Suspense fallback={<p>Opening</p>}>
        {part === "plan" && <PlanPage comboId={comboId} />}
        {part === "race" && <RacePage comboId={comboId} />}
        {part === "record" && <RecordPage />}
      </Suspense>
    );
  return <TargetsFront comboId={comboId} />;
}

/** The targets of all combos, or of the one the address names. */
function TargetsFront({ comboId }: { readonly comboId: Id | undefined }) {
  const combos = useCombos();
  const chosen = useRows(preferences, []);
  const stored = useRows(targets, []);
  useForecastsKept(0);
  if (combos === undefined || chosen === undefined || stored === undefined) return <p>Opening Targets</p>;
  return <Targets combos={combos} comboId={comboId} preferences={chosen} stored={stored} />;
}

interface TargetsProps {
  readonly combos: readonly DrivenCombo[];
  /** The combo the address names. */
  readonly comboId: Id | undefined;
  readonly preferences: Preferences;
  readonly stored: readonly Target[];
}

function Targets({ combos, comboId, preferences: chosen, stored }: TargetsProps) {
  const today = useToday(chosen);
  const [frontKey, setFrontKey] = useState<string>();
  const front = { key: frontKey, set: setFrontKey };
  const editing = useTypedTarget("target new", front);
  const opener = useRef<HTMLButtonElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const [fresh, setFresh] = useState<Id>();
  const one = combos.find(({ id }) => id === comboId);
  const groups = combos
    .map((combo) => ({ combo, targets: stored.filter((target) => target.comboId === combo.id) }))
    .filter(({ combo, targets: some }) => (one === undefined ? some.length > 0 : combo === one));
  const [first, ...others] = one === undefined ? combos : [one, ...combos.filter((combo) => combo !== one)];
  useFocusBack(editing.isOpen || undefined, () => opener.current);
  return (
    <div className={styles["screen"]}>
      <div className={styles["head"]}>
        <h1 ref={heading} tabIndex={-1}>
          Targets
        </h1>
        {first !== undefined && !editing.isOpen && (
          <Button ref={opener} size="between" variant="primary" onClick={editing.open}>
            Set a target
          </Button>
        )}
      </div>
      {comboId !== undefined && (
        <p>
          {one === undefined && "The combo of this address is not there. "}
          <a href={printAddress({ place: "targets" })}>Show the targets of all combos</a>
        </p>
      )}
      <HalfTyped of={editing.kept} />
      {first !== undefined && editing.isOpen && (
        <FaultBoundary what="The form">
          <TargetForm
            editing={editing}
            combos={[first, ...others]}
            preferences={chosen}
            today={today}
            onClose={editing.close}
            onStored={(targetId, ofCombo) => {
              setFresh(targetId);
              if (one !== undefined && one.id !== ofCombo) goTo({ place: "targets", comboId: ofCombo });
            }}
          />
        </FaultBoundary>
      )}
      <div className={styles["box"]}>
        <div className={styles["combos"]}>
          {groups.map(({ combo, targets: some }) => (
            <FaultBoundary key={combo.id} what={`The targets of ${combo.name}`}>
              <ComboTargets
                combo={combo}
                targets={some}
                preferences={chosen}
                today={today}
                front={front}
                onGone={() => heading.current?.focus({ preventScroll: true })}
                fresh={fresh}
                onFresh={setFresh}
              />
            </FaultBoundary>
          ))}
          {groups.some(({ targets: some }) => some.length > 0) && (
            <Disclosure
              title="How far can a chance be trusted?"
              answer="about right on the whole, too hopeful for those who no longer improve"
              level={2}
            >
              <ul className={styles["sentences"]}>
                {chanceMeaning.map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            </Disclosure>
          )}
        </div>
      </div>
      {one === undefined && groups.length > 0 && (
        <WithoutTarget combos={combos.filter((combo) => groups.every((group) => group.combo !== combo))} />
      )}
      <RecordLine today={today} />
      {groups.length === 0 && !editing.isOpen && <NoTargets hasCombo={first !== undefined} />}
    </div>
  );
}

function NoTargets({ hasCombo }: { readonly hasCombo: boolean }) {
  if (hasCombo)
    return (
      <p>
        No target is set yet. A target is a lap time you want to reach by a date, with one combo. Without one
        the next session can be planned and a race worked out:{" "}
        <a href={printAddress({ place: "targets", part: "plan" })}>Plan</a>,{" "}
        <a href={printAddress({ place: "targets", part: "race" })}>Race distance</a>
      </p>
    );
  return (
    <p>
      A target belongs to a combo, and there is none yet.{" "}
      <a href={printAddress({ place: "log" })}>Start a session in Log</a>
    </p>
  );
}
