import { useEffect, useMemo, useState } from "react";
import type { ComboWithNames } from "#db";
import { useDraft } from "#live";
import { Button } from "#ui/Button.tsx";
import { Columns } from "#ui/Columns.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Part } from "#ui/Part.tsx";
import { useHasRoom } from "#ui/useHasRoom.ts";
import { counted } from "#words";
import { CarPart } from "./CarPart.tsx";
import { CopyDialog } from "./CopyDialog.tsx";
import { CornerForms } from "./CornerForms.tsx";
import { CornerGrid } from "./CornerGrid.tsx";
import { cornerCells, plainCells } from "./cornerCells.ts";
import { cellId } from "./GridCell.tsx";
import { HowMany } from "./HowMany.tsx";
import styles from "./Layout.module.css";
import { LayoutPart } from "./LayoutPart.tsx";
import { PasteDialog } from "./PasteDialog.tsx";
import type { AroundCorner } from "./readCorner.ts";
import { useCornerRows } from "./useCornerRows.ts";

/** What is known of a layout: its corners as a table, the layout as a whole, and the car that drives there. */
export function LayoutPage({ combo: named }: { readonly combo: ComboWithNames }) {
  const { combo, layout, car } = named;
  const { length } = layout.corners;
  const around = useMemo(
    (): AroundCorner => ({
      car,
      sectors: layout.sectors,
      speeds: new Map((combo.lowestSpeeds ?? []).map(({ number, speed }) => [number, speed])),
    }),
    [car, layout, combo],
  );
  const table = useCornerRows(named, around);
  const pasted = useDraft(`corners pasted ${combo.id}`, "");
  const [isMeasured, setMeasured] = useState(false);
  const [asked, setAsked] = useState<"paste" | "copy">();
  const hasRoom = useHasRoom("desk");
  const [isNumbered, setNumbered] = useState(false);
  useEffect(() => {
    // The field that asked for their number is gone; the first corner takes its focus.
    if (isNumbered && length > 0) document.getElementById(cellId("1", "name"))?.focus();
    if (length > 0) setNumbered(false);
  }, [isNumbered, length]);
  const filled = cornerCells.filter((cell) => table.rows.some(({ texts }) => texts[cell] !== ""));
  const cells = cornerCells.filter(
    (cell) => plainCells.includes(cell) || isMeasured || filled.includes(cell),
  );
  return (
    <>
      <Part title="Corners in lap order" ruled aside={length === 0 ? "none yet" : counted(length, "corner")}>
        {length === 0 && <HowMany layout={layout} onNumbered={() => setNumbered(true)} />}
        <HalfTyped of={table.draft} />
        {hasRoom ? (
          <CornerGrid
            table={table}
            cells={cells}
            onPasted={(text) => {
              pasted.set(text);
              setAsked("paste");
            }}
          />
        ) : (
          <CornerForms table={table} />
        )}
        <div className={styles["buttons"]}>
          {hasRoom && cells.length < cornerCells.length && (
            <Button size="between" onClick={() => setMeasured(true)}>
              Show measured values
            </Button>
          )}
          {hasRoom && isMeasured && (
            <Button size="between" onClick={() => setMeasured(false)}>
              Hide empty columns
            </Button>
          )}
          <Button size="between" onClick={() => setAsked("paste")}>
            Paste from a spreadsheet
          </Button>
          <Button size="between" onClick={() => setAsked("copy")}>
            Copy from another layout
          </Button>
        </div>
        <HalfTyped of={pasted} />
      </Part>
      <Columns>
        <LayoutPart layout={layout} />
        <CarPart car={car} corners={layout.corners} />
      </Columns>
      {asked === "paste" && (
        <PasteDialog
          comboId={combo.id}
          layout={layout}
          around={around}
          typed={pasted}
          onClose={() => setAsked(undefined)}
        />
      )}
      {asked === "copy" && <CopyDialog layout={layout} onClose={() => setAsked(undefined)} />}
    </>
  );
}
