/** A corner, the car in it, and the straights beside it. Metres, degrees, m/s, m/s². */
export interface Corner {
  /** Radius of the inner edge. */
  readonly innerRadius: number;
  /** Between the edges a driver may use, kerbs included. */
  readonly roadWidth: number;
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

export const nothingUnused = { entry: 0, apex: 0, exit: 0 } as const;

/** The angle turned up to the apex, in degrees. */
export const apexOf = (corner: Corner): number => corner.apexAngle ?? corner.angle / 2;
