import { vi } from "vitest";
import { addCombo, type ComboWithNames, combosWithNames, editLayout, type Logbook } from "#db";
import type { Corner } from "#domain";
import { useLogbook, useRows } from "#live";
import { LayoutPage } from "../../../../../src/screens/corners/layout/LayoutPage.tsx";

/** The logbook behind the page, and what it holds of its combo. */
export const stored: { combo: ComboWithNames | undefined; book: Logbook | undefined } = {
  combo: undefined,
  book: undefined,
};

/** The page of the layout that was driven first, as its screen draws it. */
export function TheLayout() {
  const combo = useRows(combosWithNames, [])?.find(({ track }) => track.name === "Varnholt Ring");
  stored.combo = combo;
  stored.book = useLogbook().book;
  return combo && <LayoutPage combo={combo} />;
}

/** A combo whose layout has these corners. */
export const aLayout =
  (corners: readonly Corner[] = [], track = "Varnholt Ring") =>
  async (book: Logbook) => {
    const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: track } });
    const combo = (await combosWithNames(book)).find((one) => one.combo.id === comboId);
    await editLayout(book, { layoutId: combo?.layout.id ?? "", patch: { corners, sectors: 3 } });
  };

/** A page as wide as a desk, where nothing is measured by itself. */
export function onADesk(): void {
  vi.spyOn(document.documentElement, "clientWidth", "get").mockReturnValue(1280);
  document.documentElement.style.fontSize = "16px";
  document.documentElement.style.setProperty("--edge", "32px");
}
