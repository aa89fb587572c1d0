import type { RangedThing, WrongMeasure } from "#domain";

type Range = (from: number, to: number) => string;

const ranges: Readonly<Record<RangedThing, Range>> = {
  "side angle": (from, to) => `side angle must lie from ${from} to under ${to} degrees`,
  reserve: (from, to) => `reserve must lie from ${from} to under ${to}`,
  share: (from, to) => `share must lie between ${from} and ${to}`,
  "wanted share": (from, to) => `wanted share must lie between ${from} and ${to}`,
  "angle of the corner": (from, to) => `the corner must turn through ${from} to ${to} degrees`,
  "kerb at the apex": (_, to) =>
    `the kerb at the apex must be narrower than the inner radius of ${rounded(to)}`,
  banking: (_, to) => `banking must be under ${to} degrees`,
};

/** To a hundredth, so that sums in floating point do not show. */
const rounded = (value: number): number => Math.round(value * 100) / 100;

/**
 * What is wrong with measures from which nothing can be worked out.
 * @example sayWrongMeasure({ because: "not above zero", measure: "distance", value: 0 })
 * // "distance must be more than 0, is 0"
 */
export function sayWrongMeasure(wrong: WrongMeasure): string {
  switch (wrong.because) {
    case "not above zero":
      return `${wrong.measure} must be more than 0, is ${wrong.value}`;
    case "below zero":
      return `${wrong.measure} must be 0 or more, is ${wrong.value}`;
    case "out of range":
      return `${ranges[wrong.measure](wrong.from, wrong.to)}, is ${wrong.value}`;
    case "more than half a circle":
      return `a screen ${wrong.arcWidth} wide at a radius of ${wrong.radius} would be more than half a circle`;
    case "side screens seen from behind":
      return `at a side angle of ${wrong.sideAngle} degrees the eye sees the side screens from behind`;
    case "side screens meet":
      return `at a side angle of ${wrong.sideAngle} degrees the side screens run into each other`;
    case "peak cut off":
      return "a peak of 100 % is cut off, so the true one is unknown: use the share of time at the limit";
    case "top speed under the approach":
      return `top speed must not be under the approach speed of ${wrong.approachSpeed}, is ${wrong.topSpeed}`;
    case "apex outside the corner":
      return `the apex must lie inside the corner of ${wrong.angle} degrees, is at ${wrong.apexAngle}`;
    case "car wider than the road":
      return `the road must be wider than the car: ${rounded(wrong.roadWidth)} m against ${rounded(wrong.carWidth)} m`;
    case "more unused than there is":
      return `${rounded(wrong.unused)} m unused is more than the ${rounded(wrong.room)} m there are beside the car`;
    case "straights too short":
      return "the straights beside this corner are too short for any line that uses the whole road";
  }
}
