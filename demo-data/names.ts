import type { AllRows, Car, Combo, Id, Layout, Track } from "#domain";
import { type ComboKey, carFacts, comboKeys, combos } from "./combos.ts";
import { evenings } from "./evenings.ts";
import { places } from "./places.ts";
import { instantAt } from "./season.ts";
import type { Stamp } from "./stamps.ts";

/** Cars, tracks, layouts and combos, and where to find a combo. */
export interface Names extends Pick<AllRows, "cars" | "tracks" | "layouts" | "combos"> {
  readonly comboIds: Readonly<Record<ComboKey, Id>>;
}

/** The rows that sessions hang on; each is made shortly before the first session that needs it. */
export function makeNames(stamp: Stamp): Names {
  const cars = new Map<string, Car>();
  const tracks = new Map<string, Track>();
  const layouts = new Map<string, Layout>();
  const made = new Map<ComboKey, Combo>();
  for (const { combo: key, date, clock } of evenings) {
    if (made.has(key)) continue;
    const { car, track, lowestSpeeds } = combos[key];
    const at = instantAt(date, clock) - 60_000;
    if (!cars.has(car)) cars.set(car, { ...stamp(at), name: car, ...carFacts[car] });
    if (!tracks.has(track)) {
      const row = { ...stamp(at), name: track };
      tracks.set(track, row);
      layouts.set(track, layoutOf(row, stamp));
    }
    const carId = cars.get(car)?.id as Id;
    const layoutId = layouts.get(track)?.id as Id;
    made.set(key, { ...stamp(at), carId, layoutId, ...(lowestSpeeds && { lowestSpeeds }) });
  }
  const comboIds = Object.fromEntries(comboKeys.map((key) => [key, made.get(key)?.id])) as Names["comboIds"];
  return {
    cars: [...cars.values()],
    tracks: [...tracks.values()],
    layouts: [...layouts.values()],
    combos: [...made.values()],
    comboIds,
  };
}

function layoutOf({ id: trackId, name, createdAt }: Track, stamp: Stamp): Layout {
  const { length, corners, sectorShares } = places[name] ?? { length: 0, corners: [], sectorShares: [] };
  return { ...stamp(createdAt), trackId, name: "", sectors: sectorShares.length, length, corners };
}
