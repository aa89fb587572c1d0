import { preferences, rigs } from "#db";
import { type CalendarDate, type Preferences, type RigSettings, rigOn, rigsInOrder } from "#domain";
import { useCombos, useRows, useToday } from "#live";
import { printAddress } from "#state/address.ts";
import { Part } from "#ui/Part.tsx";
import { PlanForm } from "./PlanForm.tsx";

/** Plans a rig test: two settings, what is judged, and at once what it takes to find out. */
export function PlanTest() {
  const rows = useRows(async (book) => ({ chosen: await preferences(book), records: await rigs(book) }), []);
  return rows === undefined ? null : <OnCombos {...rows} />;
}

interface OnCombosProps {
  readonly chosen: Preferences;
  readonly records: readonly RigSettings[];
}

function OnCombos({ chosen, records }: OnCombosProps) {
  const today: CalendarDate = useToday(chosen);
  const combos = useCombos();
  if (combos === undefined) return null;
  const [first, ...others] = combos;
  if (first === undefined)
    return (
      <Part title="Test a change" ruled>
        <p>
          A test is driven on one combo. <a href={printAddress({ place: "log" })}>Log a session</a> first;
          then plan it here.
        </p>
      </Part>
    );
  return (
    <PlanForm
      combos={[first, ...others]}
      records={rigsInOrder(records)}
      inForce={rigOn(records, today)}
      today={today}
    />
  );
}
