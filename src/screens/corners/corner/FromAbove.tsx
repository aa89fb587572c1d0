import { LineDrawing } from "#charts/corners/LineDrawing.tsx";
import { type CornerCost, cornerPath, nothingUnused } from "#physics";
import { isApexElsewhere, sayFromAbove, sayRadii } from "#words";
import type { ApexPlaces } from "./apexPlaces.ts";

interface FromAboveProps {
  readonly cost: CornerCost;
  /** Its gaps were seen in a replay; else there is only the widest line to draw. */
  readonly isLookedAt: boolean;
  readonly direction: "left" | "right";
  /** Undefined where no place of the apex can be told. */
  readonly apexes: ApexPlaces | undefined;
}

/** The corner's line as driven beside the widest line, to scale, with both radii and the best place for the apex. */
export function FromAbove({ cost: { corner, line }, isLookedAt, direction, apexes }: FromAboveProps) {
  const widest = cornerPath(corner, nothingUnused);
  const driven = cornerPath(corner);
  if (!widest.known || !driven.known) return null;
  const shown = isLookedAt ? driven.value : widest.value;
  const { apexAngle = corner.angle / 2 } = corner;
  const best = apexes && isApexElsewhere(apexes) ? apexes : undefined;
  const bestPath = best && cornerPath(corner, nothingUnused, best.apexAngle);
  const radii = isLookedAt ? sayRadii(line.entryRadius, line.exitRadius) : undefined;
  return (
    <LineDrawing
      corner={{
        direction,
        inner: shown.inner,
        outer: shown.outer,
        kerbs: Object.values(shown.kerbs).filter((kerb) => kerb.length > 0),
        widest: widest.value.centre,
        driven: isLookedAt ? driven.value.centre : undefined,
        cars: [
          { at: shown.turnIn, turned: 0 },
          { at: shown.apex, turned: apexAngle },
          { at: shown.turnedOut, turned: corner.angle },
        ],
        carWidth: corner.carWidth,
        angle: corner.angle,
        apex: { at: widest.value.apex, turned: apexAngle },
        bestApex: bestPath?.known ? { at: bestPath.value.apex, turned: best?.apexAngle ?? 0 } : undefined,
      }}
      label={sayFromAbove({
        direction,
        angle: corner.angle,
        widest: line.widestRadius,
        driven: radii,
        bestApex: best?.best,
      })}
      driven={radii}
      widest={sayRadii(line.widestRadius, line.widestRadius)}
    />
  );
}
