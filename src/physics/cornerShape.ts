/** A corner, the car in it, and the straights beside it. Metres, degrees, m/s, m/s². */
export interface Corner {
  /** Radius of the inner edge. */
  readonly innerRadius: number;
  /** Between the edges a driver may use; without the kerbs where those are given beside it. */
  readonly roadWidth: number;
  /**
   * Kerbs a driver may use beside the road. That at the apex moves the inner edge in, those at entry and exit widen the
   * road there; what is unused is measured from the edge of what may be used.
   */
  readonly kerbs?: Kerbs;
  readonly carWidth: number;
  /** Angle the road turns through, 5 to 200. */
  readonly angle: number;
  /** Angle turned up to the apex; half of `angle` when not known. */
  readonly apexAngle?: number;
  /** Road left unused, in metres. */
  readonly unused: { readonly entry: number; readonly apex: number; readonly exit: number };
  /** Coefficient of friction. */
  readonly grip: number;
  readonly braking: number;
  readonly drive: number;
  readonly approachLength: number;
  readonly approachSpeed: number;
  readonly exitLength: number;
  /** Banking towards the inside; 0 when not given. */
  readonly banking?: number;
  /** Speed the straights allow at most. */
  readonly topSpeed?: number;
}

/** Metres of kerb beside the road. */
export interface Kerbs {
  readonly entry: number;
  readonly apex: number;
  readonly exit: number;
}

export const nothingUnused = { entry: 0, apex: 0, exit: 0 } as const;
export const noKerbs: Kerbs = { entry: 0, apex: 0, exit: 0 };

/** The angle turned up to the apex, in degrees. */
export const apexOf = (corner: Corner): number => corner.apexAngle ?? corner.angle / 2;

/** What a driver may use of a corner. */
export interface UsableRoad {
  /** Radius of the inner edge, the kerb at the apex taken off. */
  readonly innerRadius: number;
  /** Metres beside the car between the edges that may be used, at the apex's end of it the kerb included. */
  readonly entryRoom: number;
  readonly exitRoom: number;
}

/** What may be used of a corner, kerbs included. */
export function usableRoad({
  innerRadius,
  roadWidth,
  carWidth,
  kerbs = noKerbs,
}: Pick<Corner, "innerRadius" | "roadWidth" | "carWidth" | "kerbs">): UsableRoad {
  const room = roadWidth - carWidth + kerbs.apex;
  return {
    innerRadius: innerRadius - kerbs.apex,
    entryRoom: room + kerbs.entry,
    exitRoom: room + kerbs.exit,
  };
}
