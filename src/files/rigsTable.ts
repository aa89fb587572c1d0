import type { AllRows, RigSettings } from "#domain";
import type { CsvTable } from "./exportRows.ts";
import type { CsvCell } from "./writeCsv.ts";

const fields: readonly (readonly [string, (rig: RigSettings) => CsvCell | undefined])[] = [
  ["from", ({ from }) => ({ figures: from })],
  ["name", ({ name }) => name],
  ["screen", ({ screen }) => screen.kind],
  ["screen width m", ({ screen }) => screen.width],
  ["screen height m", ({ screen }) => screen.height],
  ["eye distance m", ({ screen }) => screen.eyeDistance],
  ["screen radius m", ({ screen }) => screen.radius],
  ["bezel m", ({ screen }) => screen.bezel],
  ["side angle degrees", ({ screen }) => screen.sideAngle],
  ["pixels across", ({ screen }) => screen.pixelsAcross],
  ["field of view degrees", ({ view }) => view.degrees],
  ["field of view axis", ({ view }) => view.axis],
  ["view note", ({ view }) => view.note],
  ["wheel", ({ wheel }) => wheel.name],
  ["torque N·m", ({ wheel }) => wheel.torque],
  ["gain percent", ({ wheel }) => wheel.gainPercent],
  ["damping", ({ wheel }) => wheel.damping],
  ["rotation degrees", ({ wheel }) => wheel.rotation],
  ["rim radius m", ({ wheel }) => wheel.rimRadius],
  ["wheel note", ({ wheel }) => wheel.note],
  ["pedals", ({ pedals }) => pedals.name],
  ["brake force kg", ({ pedals }) => pedals.brakeForceKg],
  ["pedals note", ({ pedals }) => pedals.note],
  ["seat note", ({ seat }) => seat.note],
  ["note", ({ note }) => note],
];

/** Every record of rig settings that is not deleted, one a row, oldest first. */
export function rigsTable(rows: AllRows): CsvTable {
  const rigs = rows.rigs
    .filter(({ deletedAt }) => deletedAt === undefined)
    .sort((a, b) => (a.from === b.from ? a.createdAt - b.createdAt : a.from < b.from ? -1 : 1));
  return [fields.map(([head]) => head), ...rigs.map((rig) => fields.map(([, cell]) => cell(rig) ?? ""))];
}
