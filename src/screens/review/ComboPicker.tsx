import { type DrivenCombo, useOtherCombos } from "#live";
import { goTo, type Period, printAddress, type ReviewAddress } from "#state/address.ts";
import { PickOther } from "#ui/PickOther.tsx";

interface ComboPickerProps {
  readonly combo: DrivenCombo;
  readonly combos: readonly DrivenCombo[];
  readonly period: Period;
}

/** The combo looked at, and the way to another one. */
export function ComboPicker({ combo, combos, period }: ComboPickerProps) {
  const others = useOtherCombos(combos, combo.id);
  // Chosen dates belong to one combo's history, a rolling period to any.
  const kept: Period = period.kind === "dates" ? { kind: "12w" } : period;
  const addressOf = (comboId: string): ReviewAddress => ({ place: "review", comboId, period: kept });
  return (
    <PickOther
      name={combo.name}
      of="Combo"
      opener="Another combo"
      others={others.map((other) => ({ ...other, href: printAddress(addressOf(other.id)) }))}
      onPick={({ id }) => goTo(addressOf(id))}
    />
  );
}
