import { setPlanMinutes } from "#db";
import { practiceRanges } from "#domain";
import { type Measure, readMeasure } from "#entry";
import { useStoredText, useWrite } from "#live";
import type { PlanDraft } from "#stats";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";
import type { ShownPlan } from "./useShownPlan.ts";

const measure: Measure = { name: "Minutes", unit: "min", ...practiceRanges.minutes, isWhole: true };

/** How long the next session may be; the usual evening unless said. A draft is fitted to it at once. */
export function Minutes({ context }: { readonly context: PlanContext }) {
  const write = useWrite();
  const { plan, facts } = context;
  const { comboId, minutes } = plan;
  const { field, store, draft } = useStoredText<number | undefined>({
    draftKey: `plan minutes ${comboId}`,
    value: minutes,
    stored: minutes === undefined ? "" : String(minutes),
    read: (text) => readMeasure(text, measure),
    onStore: (value) => write((book) => setPlanMinutes(book, { comboId, minutes: value })),
  });
  return (
    <form
      aria-label="Time for it"
      className={styles["minutes"]}
      onSubmit={(event) => {
        event.preventDefault();
        store();
      }}
    >
      <Field
        label="Minutes you have"
        figures
        unit="min"
        size="between"
        inputMode="numeric"
        placeholder={facts.evening === undefined ? "" : String(facts.evening.minutes)}
        hint={sayFitting(context)}
        {...field}
      />
      <HalfTyped of={draft} />
    </form>
  );
}

function sayFitting({ plan, facts, draft }: PlanContext): string {
  const usual = facts.evening?.minutes;
  if (usual === undefined) return "A draft can be fitted to them once it is known how long a lap takes here.";
  return `Your usual evening takes ${usual} min. ${sayFitted(plan, usual, draft)}`;
}

function sayFitted({ isOwn, minutes }: ShownPlan, usual: number, { room, isShortOfLaps }: PlanDraft): string {
  if (isOwn) return "Your plan stays as it is; a new draft is fitted to the minutes.";
  const isFreed = room.minutes > usual && minutes === undefined;
  const fitted = isFreed
    ? `The draft takes up to ${room.minutes} min, for three short runs`
    : "The draft is fitted to the minutes";
  return isShortOfLaps
    ? `${fitted}, with no more than half as many laps again as your usual evening.`
    : `${fitted}.`;
}
