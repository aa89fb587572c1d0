import { inWords } from "./counted.ts";

const quarters = ["", "a quarter of a car", "half a car", "three quarters of a car"] as const;
/** Beyond so many quarters of a car metres say more. */
const MOST_QUARTERS = 12;
/** A gap is told in quarters of a car where it lies within a twelfth of one. */
const NEAR = 1 / 3;

/**
 * A gap between the car and the edge of the road, in metres and, where it is near one, in quarters of a car.
 * @param metres 0 or more
 * @param carWidth m
 * @example sayGap(0.9, 1.8) // "half a car (0.9 m)"
 * @example sayGap(2.7, 1.8) // "one and a half cars (2.7 m)"
 * @example sayGap(0.6, 1.8) // "0.6 m"
 */
export function sayGap(metres: number, carWidth: number): string {
  const inMetres = sayMetres(metres);
  const parts = (metres / carWidth) * 4;
  const nearest = Math.round(parts);
  if (nearest < 1 || nearest > MOST_QUARTERS || Math.abs(parts - nearest) > NEAR) return inMetres;
  return `${carsOf(nearest)} (${inMetres})`;
}

/**
 * A width in quarters of a car, in words.
 * @param parts whole and more than 0
 * @example carsOf(10) // "two and a half cars"
 */
export function carsOf(parts: number): string {
  const [whole, rest] = [Math.floor(parts / 4), parts % 4];
  if (whole === 0) return quarters[rest] ?? "";
  const cars = inWords(whole);
  if (rest === 0) return whole === 1 ? "one car" : `${cars} cars`;
  return `${cars} and ${rest === 2 ? "a half" : (quarters[rest] ?? "").replace(" of a car", "")} cars`;
}

/** Metres in tenths: "0.9 m" */
export function sayMetres(metres: number): string {
  return `${metres.toFixed(1)} m`;
}

/**
 * What was seen at one edge, negative being over it.
 * @example sayGapAt(-0.25, 1.8) // "0.3 m over the edge"
 * @example sayGapAt(0, 1.8) // "nothing left"
 * @example sayGapAt(0.9, 1.8) // "half a car (0.9 m) left"
 */
export function sayGapAt(metres: number, carWidth: number): string {
  if (metres === 0) return "nothing left";
  return metres < 0 ? `${sayMetres(-metres)} over the edge` : `${sayGap(metres, carWidth)} left`;
}
