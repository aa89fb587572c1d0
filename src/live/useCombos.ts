import { type ComboWithNames, combosWithNames, lastDriven } from "#db";
import { comboName, type Id } from "#domain";
import { useUntil } from "./logbookContext.ts";
import { useRows } from "./useRows.ts";

/** A combo that can be picked. */
export interface DrivenCombo extends ComboWithNames {
  readonly id: Id;
  /** "Varnholt Ring · club hatch" */
  readonly name: string;
  /** Start of its newest session; 0 where that is dated after tomorrow; absent while it has none. */
  readonly drivenAt: number | undefined;
}

/** Every combo, the one driven last first, those never driven last by name; undefined until they have been read. */
export function useCombos(): readonly DrivenCombo[] | undefined {
  const until = useUntil();
  return useRows(
    async (book) => {
      const combos = await combosWithNames(book);
      const driven = await lastDriven(
        book,
        combos.map(({ combo }) => combo.id),
        until,
      );
      return combos
        .map((named): DrivenCombo => {
          const { id } = named.combo;
          return { ...named, id, name: comboName(named), drivenAt: driven.get(id) };
        })
        .sort((a, b) => (b.drivenAt ?? 0) - (a.drivenAt ?? 0) || a.name.localeCompare(b.name, "en"));
    },
    [until],
  );
}
