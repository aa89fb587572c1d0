import type { AllRows, RigSettings } from "#domain";
import type { CsvTable } from "./exportRows.ts";
import type { CsvCell } from "./writeCsv.ts";

/** One setting of a rig record: what it is called, its value, and the unit of a figure. */
export interface RigSetting {
  readonly name: string;
  readonly unit?: "m" | "°" | "%" | "N·m" | "kg";
  readonly of: (rig: RigSettings) => string | number | undefined;
}

/** Every setting of a rig record, in the order of its form; not its date, its own name and its note. */
export const rigSettings: readonly RigSetting[] = [
  { name: "screen", of: ({ screen }) => screen.kind },
  { name: "screen width", unit: "m", of: ({ screen }) => screen.width },
  { name: "screen height", unit: "m", of: ({ screen }) => screen.height },
  { name: "eye distance", unit: "m", of: ({ screen }) => screen.eyeDistance },
  { name: "screen radius", unit: "m", of: ({ screen }) => screen.radius },
  { name: "bezel", unit: "m", of: ({ screen }) => screen.bezel },
  { name: "side angle", unit: "°", of: ({ screen }) => screen.sideAngle },
  { name: "pixels across", of: ({ screen }) => screen.pixelsAcross },
  { name: "field of view", unit: "°", of: ({ view }) => view.degrees },
  { name: "field of view axis", of: ({ view }) => view.axis },
  { name: "view note", of: ({ view }) => view.note },
  { name: "wheel", of: ({ wheel }) => wheel.name },
  { name: "torque", unit: "N·m", of: ({ wheel }) => wheel.torque },
  { name: "gain", unit: "%", of: ({ wheel }) => wheel.gainPercent },
  { name: "damping", of: ({ wheel }) => wheel.damping },
  { name: "rotation", unit: "°", of: ({ wheel }) => wheel.rotation },
  { name: "rim radius", unit: "m", of: ({ wheel }) => wheel.rimRadius },
  { name: "wheel note", of: ({ wheel }) => wheel.note },
  { name: "pedals", of: ({ pedals }) => pedals.name },
  { name: "brake force", unit: "kg", of: ({ pedals }) => pedals.brakeForceKg },
  { name: "load cell range", unit: "kg", of: ({ pedals }) => pedals.loadCellKg },
  { name: "brake dead zone", unit: "%", of: ({ pedals }) => pedals.brakeDeadZone },
  { name: "throttle dead zone", unit: "%", of: ({ pedals }) => pedals.throttleDeadZone },
  { name: "brake curve", of: ({ pedals }) => pedals.curve },
  { name: "pedals note", of: ({ pedals }) => pedals.note },
  { name: "seat height", unit: "m", of: ({ seat }) => seat.height },
  { name: "eye height", unit: "m", of: ({ seat }) => seat.eyeHeight },
  { name: "seat note", of: ({ seat }) => seat.note },
];

const inHeads = { m: "m", "°": "degrees", "%": "percent", N·m: "N·m", kg: "kg" } as const;

const fields: readonly (readonly [string, (rig: RigSettings) => CsvCell | undefined])[] = [
  ["from", ({ from }) => ({ figures: from })],
  ["name", ({ name }) => name],
  ...rigSettings.map(
    ({ name, unit, of }) => [unit === undefined ? name : `${name} ${inHeads[unit]}`, of] as const,
  ),
  ["note", ({ note }) => note],
];

/** Every record of rig settings that is not deleted, one a row, oldest first. */
export function rigsTable(rows: AllRows): CsvTable {
  const rigs = rows.rigs
    .filter(({ deletedAt }) => deletedAt === undefined)
    .sort((a, b) => (a.from === b.from ? a.createdAt - b.createdAt : a.from < b.from ? -1 : 1));
  return [fields.map(([head]) => head), ...rigs.map((rig) => fields.map(([, cell]) => cell(rig) ?? ""))];
}
