import type { Car, Layout, Track } from "./rows.ts";

/** "Varnholt Ring", or with a layout of its own name "Varnholt Ring, short". */
export function layoutName(track: Pick<Track, "name">, layout: Pick<Layout, "name">): string {
  return layout.name === "" ? track.name : `${track.name}, ${layout.name}`;
}

/** "Varnholt Ring, short · club hatch" */
export function comboName(combo: {
  readonly track: Pick<Track, "name">;
  readonly layout: Pick<Layout, "name">;
  readonly car: Pick<Car, "name">;
}): string {
  return `${layoutName(combo.track, combo.layout)} · ${combo.car.name}`;
}
