import type { RigSettings, Run } from "#domain";
import { type RigSetting, rigSettings } from "#files";
import type { FoundSide } from "#live";
import { testRuns } from "#stats";
import type { Row } from "#ui/RuledTable.tsx";
import { saidSides, sayGuest, saySide } from "#words";

/** What a run is driven with, as it is written down; empty where nothing is. */
const settings: readonly { readonly name: string; readonly of: (run: Run) => string }[] = [
  { name: "kind of run", of: ({ kind }) => kind },
  { name: "effort", of: ({ effort }) => effort },
  { name: "track", of: ({ surface }) => surface },
  { name: "driver", of: ({ guest }) => (guest === undefined ? "" : sayGuest(guest)) },
  { name: "tyres", of: ({ tyres }) => tyres?.trim() ?? "" },
  { name: "set-up", of: ({ setup }) => setup?.trim() ?? "" },
  { name: "aids", of: ({ assists }) => assists?.trim() ?? "" },
  { name: "fuel", of: ({ fuelLitres }) => (fuelLitres === undefined ? "" : `${fuelLitres} l`) },
];

/** The settings in which two runs or two sessions differ, each value of the rig and the conditions among them; none where they do not. */
export function settingRows(first: FoundSide, second: FoundSide): Row[] {
  const of = (side: FoundSide) => [
    ...settings.map((setting) => ({
      name: setting.name,
      says: said(side.runs.map(({ run }) => setting.of(run))),
    })),
    { name: "setting of the rig test", says: said(testSettings(side)) },
    { name: "conditions", says: side.session.conditions?.trim() ?? "" },
    ...rigSettings.map((setting) => ({
      name: setting.name,
      says: said(side.rigs.map((rig) => settingOf(setting, rig))),
    })),
  ];
  const [a, b] = [of(first), of(second)];
  return a.flatMap(({ name, says }, index) => {
    const other = b[index]?.says ?? "";
    if (says === other) return [];
    return [{ id: name, cells: { setting: name, first: says || "—", second: other || "—" } }];
  });
}

/** With which setting of a rig test each run was driven, whatever record was in force: "B, gain 48 %". */
function testSettings({ runs, tests }: FoundSide): string[] {
  const rows = runs.map(({ run }) => run);
  return tests.flatMap(({ test, records }) =>
    testRuns(test, rows).map(({ place }) => saySide(saidSides(test, records), place.side)),
  );
}

/** A value of the rig as it is said: "54 %", "57°". */
function settingOf({ unit, of }: RigSetting, rig: RigSettings): string {
  const value = of(rig);
  if (value === undefined || value === "") return "";
  return unit === undefined ? String(value) : `${value}${unit === "°" ? "" : "\u00a0"}${unit}`;
}

/** Each once, in the order in which they were driven. */
function said(values: readonly string[]): string {
  return [...new Set(values.filter((value) => value !== ""))].join(", ");
}
