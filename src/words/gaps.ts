import { type GapPlace, type GapScale, gapPlaces, type ReviewedCorner } from "#domain";

const quarters = ["no car", "a quarter of a car", "half a car", "three quarters of a car"] as const;
const beyond = ["", " and a quarter", " and a half", " and three quarters"] as const;

/**
 * A width of road in car widths, as it is spoken; its sign is left out.
 * @example sayInCars(0.9, 1.8) // "half a car"
 * @example sayInCars(1, 1.8) // "0.6 of a car"
 */
function sayInCars(metres: number, carWidth: number): string {
  const cars = Math.abs(metres) / carWidth;
  const steps = Math.round(cars * 4);
  if (steps > 0 && Math.abs(cars - steps / 4) < 0.005) {
    const whole = Math.floor(steps / 4);
    if (whole === 0) return quarters[steps as 1 | 2 | 3];
    if (steps === 4) return "a whole car";
    return `${whole === 1 ? "one" : whole}${beyond[steps % 4]} cars`;
  }
  if (cars < 0.05) return "less than 0.1 of a car";
  return cars < 0.95 ? `${cars.toFixed(1)} of a car` : `${cars.toFixed(1)} cars`;
}

/** A width of road in metres; its sign is left out: "0.45 m". */
function sayInMetres(metres: number): string {
  const size = Math.abs(metres);
  return size > 0 && size < 0.005 ? "less than 0.01 m" : `${Number(size.toFixed(2))} m`;
}

const at: Readonly<Record<GapPlace, string>> = { entry: "at entry", apex: "at the apex", exit: "at exit" };

/**
 * What was left of the road at one place, in the unit it is typed in and then in the other.
 * @example "half a car left at entry (0.9 m)"
 * @example "0.2 m over the edge at exit (0.1 of a car)"
 */
export function sayGap(place: GapPlace, metres: number, scale: GapScale): string {
  return toldGap(metres, scale, ` ${at[place]}`);
}

/**
 * The same where the place is said already.
 * @example "half a car left (0.9 m)"
 */
export function sayGapHere(metres: number, scale: GapScale): string {
  return toldGap(metres, scale, "");
}

function toldGap(metres: number, { unit, carWidth }: GapScale, where: string): string {
  if (metres === 0) return `nothing left${where}`;
  const inCars = sayInCars(metres, carWidth);
  const inMetres = sayInMetres(metres);
  const [first, other] = unit === "cars" ? [inCars, inMetres] : [inMetres, inCars];
  return `${first} ${metres < 0 ? "over the edge" : "left"}${where} (${other})`;
}

/** All that was seen at a corner, in one line; empty where nothing was. */
export function saySeenCorner(seen: Omit<ReviewedCorner, "number">, scale: GapScale): string {
  const { braking, throttle, isOffLine, note } = seen;
  const hasGaps = gapPlaces.some((place) => seen[place] !== undefined);
  const gaps = gapPlaces.map((place) => {
    const metres = seen[place];
    return metres === undefined ? `${place} not seen` : sayGap(place, metres, scale);
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
