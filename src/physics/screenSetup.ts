interface Glass {
  /** Width of one picture, along the glass of a curved one, without the frame. */
  readonly width: number;
  /** Undefined where it is not known: then no upright angle is. */
  readonly height?: number | undefined;
  /** From the eye to the middle of the (middle) picture: of a curved one its deepest point. */
  readonly distance: number;
}

/** What stands before the eye: lengths in metres, angles in degrees. */
export type ScreenSetup =
  | (Glass & { readonly kind: "flat" })
  | (Glass & {
      readonly kind: "three";
      /** How far the outer two are turned towards the eye; 0 = all in one plane. */
      readonly sideAngle: number;
      /** Of the frame on each side of a joint. */
      readonly bezel: number;
    })
  | (Glass & { readonly kind: "curved"; readonly radius: number });

/** The same glass, that much farther from the eye; below 0 nearer. Metres. */
export function moved<S extends ScreenSetup>(setup: S, metres: number): S {
  return { ...setup, distance: setup.distance + metres };
}
