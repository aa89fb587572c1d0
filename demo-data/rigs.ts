import type { RigSettings } from "#domain";
import { settingEffects } from "./combos.ts";
import { firstDay, instantAt } from "./season.ts";
import type { Stamp } from "./stamps.ts";

/** The three states of the rig. */
export interface Rigs {
  readonly asItWas: RigSettings;
  readonly lowerGain: RigSettings;
  readonly trueView: RigSettings;
}

/** The rig's records. The lower gain was written down when its test was over and it was kept. */
export function makeRigs(stamp: Stamp): Rigs {
  const asItWas: RigSettings = {
    ...stamp(instantAt(firstDay, "20:00")),
    from: firstDay,
    name: "As it was",
    screen: { kind: "flat", width: 0.7, height: 0.39, eyeDistance: 0.65, pixelsAcross: 2560 },
    view: { degrees: 75, axis: "horizontal" },
    wheel: {
      name: "belt-driven, 30 cm rim",
      torque: 4.2,
      gainPercent: 72,
      damping: 10,
      rotation: 540,
      rimRadius: 0.15,
    },
    pedals: { name: "spring pedals", brakeForceKg: 18 },
    seat: { note: "office chair, castors blocked" },
    note: "",
  };
  const { gain, view } = settingEffects;
  const lowerGain: RigSettings = {
    ...asItWas,
    ...stamp(instantAt("2026-09-29", "21:10")),
    from: gain.from,
    name: "Lower gain",
    wheel: { ...asItWas.wheel, gainPercent: 54, note: "No more cut-off force in the slow corners." },
    note: "Tested in eight pairs of runs at Tessemoor.",
  };
  const trueView: RigSettings = {
    ...lowerGain,
    ...stamp(instantAt(view.from, "15:30")),
    from: view.from,
    name: "Field of view true to size",
    view: { degrees: 57, axis: "horizontal", note: "worked out from screen and distance" },
    note: "",
  };
  return { asItWas, lowerGain, trueView };
}

/** The record in force on a day. */
export function rigOn({ asItWas, lowerGain, trueView }: Rigs, date: string): RigSettings {
  return [trueView, lowerGain].find(({ from }) => from <= date) ?? asItWas;
}

/** What a state of the rig does to a car's times, as a share of the lap. */
export function shareOfRig(rigs: Rigs, rig: RigSettings, car: string): number {
  const { gain, view } = settingEffects;
  const hasLowerGain = rig !== rigs.asItWas && car === gain.car;
  return (hasLowerGain ? gain.share : 0) + (rig === rigs.trueView ? view.share : 0);
}
