/** Degrees as radians. */
export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Radians as degrees. */
export const toDegrees = (radians: number): number => (radians * 180) / Math.PI;

/** Angle in degrees under which a length is seen when the eye stands square before its middle. */
export const angleOf = (length: number, distance: number): number =>
  toDegrees(2 * Math.atan(length / (2 * distance)));
