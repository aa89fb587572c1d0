/** What is measured of a screen, a wheel or a corner. */
export type MeasuredThing =
  | "width"
  | "arc width"
  | "height"
  | "distance"
  | "radius"
  | "pixels"
  | "bezel"
  | "torque"
  | "gain"
  | "peak"
  | "inner radius"
  | "road width"
  | "car width"
  | "grip"
  | "braking"
  | "drive"
  | "approach speed"
  | "approach length"
  | "exit length"
  | "unused at entry"
  | "unused at the apex"
  | "unused at exit"
  | "kerb at entry"
  | "kerb at the apex"
  | "kerb at exit"
  | "banking";

/** What must lie in a range. */
export type RangedThing =
  | "side angle"
  | "reserve"
  | "share"
  | "wanted share"
  | "angle of the corner"
  | "kerb at the apex"
  | "banking";

/** Measures from which nothing can be worked out, in the units in which they were handed in. */
export type WrongMeasure =
  | { readonly because: "not above zero"; readonly measure: MeasuredThing; readonly value: number }
  | { readonly because: "below zero"; readonly measure: MeasuredThing; readonly value: number }
  | {
      readonly because: "out of range";
      readonly measure: RangedThing;
      readonly from: number;
      readonly to: number;
      readonly value: number;
    }
  | { readonly because: "more than half a circle"; readonly arcWidth: number; readonly radius: number }
  | { readonly because: "side screens seen from behind"; readonly sideAngle: number }
  | { readonly because: "side screens meet"; readonly sideAngle: number }
  | { readonly because: "peak cut off" }
  | {
      readonly because: "top speed under the approach";
      readonly approachSpeed: number;
      readonly topSpeed: number;
    }
  | { readonly because: "apex outside the corner"; readonly angle: number; readonly apexAngle: number }
  | { readonly because: "car wider than the road"; readonly roadWidth: number; readonly carWidth: number }
  | { readonly because: "more unused than there is"; readonly unused: number; readonly room: number }
  | { readonly because: "straights too short" };
