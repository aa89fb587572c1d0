import { idMaker } from "#db";
import type { Id, Stamped } from "#domain";
import { type Chance, chanceFrom, evenly } from "./drivers.ts";
import { seeds } from "./season.ts";

/** Makes the id and the stamps of a row that was written at an instant and, if so, changed at a later one. */
export type Stamp = (createdAt: number, updatedAt?: number) => Stamped;

/** Draws that are thrown away, because this source of chance mixes a small seed only slowly. */
const unmixed = 64;

/** Random numbers of a seed, well mixed from the first on. */
export function mixedChance(seed: number): Chance {
  const chance = chanceFrom(seed);
  for (let draw = 0; draw < unmixed; draw++) chance();
  return chance;
}

/** Stamps whose ids are of version 7, with the row's own time and random bits that come from the seed. */
export function stamper(): Stamp {
  const chance = mixedChance(seeds.ids);
  const idAt = (instant: number): Id =>
    idMaker(
      () => instant,
      () => Uint8Array.from({ length: 16 }, () => Math.floor(evenly(chance, 0, 256))),
    )();
  return (createdAt, updatedAt = createdAt) => ({ id: idAt(createdAt), createdAt, updatedAt });
}
