import type { Id } from "#domain";

/** The combo that an address names, else the one driven last; undefined where there is no such one. */
export function askedCombo<C extends { readonly id: Id }>(
  combos: readonly C[],
  comboId: Id | undefined,
): C | undefined {
  return comboId === undefined ? combos[0] : combos.find(({ id }) => id === comboId);
}
