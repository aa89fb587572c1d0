import type { ComboWithNames } from "#db";
import { layoutName, type Problem } from "#domain";
import type { ColumnKind } from "#files";
import { Combobox } from "#ui/Combobox.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./Import.module.css";
import type { WholeTyped } from "./useImport.ts";

interface WholeTableFieldsProps {
  readonly columns: readonly ColumnKind[];
  readonly combos: readonly ComboWithNames[];
  readonly typed: WholeTyped;
  readonly onTyped: (typed: WholeTyped) => void;
  readonly dateProblem: Problem | undefined;
}

const once = (labels: readonly string[]) => [...new Set(labels)].map((label) => ({ id: label, label }));

/** What no column says, said once for the whole table. Draws nothing where all columns are there. */
export function WholeTableFields({ columns, combos, typed, onTyped, dateProblem }: WholeTableFieldsProps) {
  const lacks = (kind: ColumnKind) => !columns.includes(kind);
  const combobox = (kind: "car" | "track", label: string, labels: readonly string[], hint?: string) => (
    <Combobox
      label={label}
      text={typed[kind]}
      onText={(text) => onTyped({ ...typed, [kind]: text })}
      options={once(labels)}
      onPick={(option) => onTyped({ ...typed, [kind]: option.label })}
      sayMake={(text) => `New ${kind} “${text}”`}
      onMake={(text) => onTyped({ ...typed, [kind]: text })}
      hint={hint}
    />
  );
  if (!lacks("car") && !lacks("track") && !lacks("date")) return null;
  return (
    <div>
      <h3>The same for all rows</h3>
      <div className={styles["fields"]}>
        {lacks("car") &&
          combobox(
            "car",
            "Car of all laps",
            combos.map(({ car }) => car.name),
          )}
        {lacks("track") &&
          combobox(
            "track",
            "Track layout of all laps",
            combos.map(({ track, layout }) => layoutName(track, layout)),
            "A second layout: the track, a comma, the layout.",
          )}
        {lacks("date") && (
          <Field
            label="Date of all laps"
            value={typed.date}
            onChange={(date) => onTyped({ ...typed, date })}
            hint="2026-10-14 or 14 Oct 2026"
            problem={dateProblem}
          />
        )}
      </div>
    </div>
  );
}
