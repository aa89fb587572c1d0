import { requireNumber } from "#numbers";

/**
 * Fuel for a race, in litres: use a lap times laps, plus the driver's own reserve. Our methods, §10.
 * @throws RangeError for a value that is below 0 or not finite, naming it
 * @example fuelNeeded({ perLap: 2.4, laps: 20, reserve: 2 }) // 50
 */
export function fuelNeeded(race: {
  readonly perLap: number;
  readonly laps: number;
  readonly reserve: number;
}): number {
  for (const name of ["perLap", "laps", "reserve"] as const) {
    requireNumber(race[name], name);
    if (race[name] < 0) throw new RangeError(`${name} is ${race[name]}: 0 or more is needed`);
  }
  return race.perLap * race.laps + race.reserve;
}
