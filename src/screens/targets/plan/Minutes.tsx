import { setPlanMinutes } from "#db";
import { practiceRanges } from "#domain";
import { type Measure, readMeasure } from "#entry";
import { useStoredText, useWrite } from "#live";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";

const measure: Measure = { name: "Minutes", unit: "min", ...practiceRanges.minutes, isWhole: true };

/** How long the next session may be; the usual evening unless said. A draft is fitted to it at once. */
export function Minutes({ context: { plan, facts } }: { readonly context: PlanContext }) {
  const write = useWrite();
  const { comboId, minutes, isOwn } = plan;
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
        hint={sayFitting(facts.evening?.minutes, isOwn)}
        {...field}
      />
      <HalfTyped of={draft} />
    </form>
  );
}

function sayFitting(usual: number | undefined, isOwn: boolean): string {
  if (usual === undefined) return "A draft can be fitted to them once it is known how long a lap takes here.";
  const fitted = isOwn
    ? "Your plan stays as it is; a new draft is fitted to the minutes."
    : "The draft is fitted to the minutes.";
  return `Your usual evening takes ${usual} min. ${fitted}`;
}
