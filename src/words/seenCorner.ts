import { type GapPlace, type GapScale, gapPlaces, type ReviewedCorner } from "#domain";
import { placeWords } from "./cornersSay.ts";
import { carsOf } from "./gap.ts";

/** As it was typed: by its quarters in words, else in tenths of a car. */
function inCars(metres: number, carWidth: number): string {
  const cars = Math.abs(metres) / carWidth;
  const parts = Math.round(cars * 4);
  if (parts > 0 && Math.abs(cars - parts / 4) < 0.005) return carsOf(parts);
  if (cars < 0.05) return "less than 0.1 of a car";
  return cars < 0.95 ? `${cars.toFixed(1)} of a car` : `${cars.toFixed(1)} cars`;
}

function inMetres(metres: number): string {
  const size = Math.abs(metres);
  return size < 0.005 ? "less than 0.01 m" : `${Number(size.toFixed(2))} m`;
}

/**
 * What was left of the road at one place, in the unit it is typed in and then in the other.
 * @example "half a car left at entry (0.9 m)"
 * @example "0.2 m over the edge at exit (0.1 of a car)"
 */
export function saySeenGap(place: GapPlace, metres: number, scale: GapScale): string {
  return toldGap(metres, scale, ` ${placeWords[place]}`);
}

/**
 * The same where the place is said already.
 * @example "half a car left (0.9 m)"
 */
export function saySeenGapHere(metres: number, scale: GapScale): string {
  return toldGap(metres, scale, "");
}

function toldGap(metres: number, { unit, carWidth }: GapScale, where: string): string {
  if (metres === 0) return `nothing left${where}`;
  const said = [inCars(metres, carWidth), inMetres(metres)];
  const [first, other] = unit === "cars" ? said : said.toReversed();
  return `${first} ${metres < 0 ? "over the edge" : "left"}${where} (${other})`;
}

/** All that was seen at a corner, in one line; empty where nothing was. */
export function saySeenCorner(seen: Omit<ReviewedCorner, "number">, scale: GapScale): string {
  const { braking, throttle, isOffLine, note } = seen;
  const hasGaps = gapPlaces.some((place) => seen[place] !== undefined);
  const gaps = gapPlaces.map((place) => {
    const metres = seen[place];
    return metres === undefined ? `${place} not seen` : saySeenGap(place, metres, scale);
  });
  return [
    hasGaps && gaps.join(", "),
    braking && `braking ${braking}`,
    throttle && `throttle ${throttle}`,
    isOffLine && "off line",
    note,
  ]
    .filter(Boolean)
    .join(" · ");
}
