import type { Id, ReferenceLap, Target } from "#domain";
import type { ComboKey } from "./combos.ts";
import { instantAt } from "./season.ts";
import type { Stamp } from "./stamps.ts";

/** What the driver wants to reach, with the figure on the day it was set. */
const wanted: readonly (Pick<Target, "kind" | "value" | "by" | "setOn" | "process" | "start"> & {
  readonly combo: ComboKey;
  readonly archivedOn?: string;
})[] = [
  {
    combo: "fenHatch",
    kind: "best",
    value: 85_000,
    setOn: "2026-09-06",
    by: "2026-10-04",
    archivedOn: "2026-10-01",
    process: "one brake point for corner 5",
  },
  {
    combo: "fenHatch",
    kind: "best",
    value: 83_300,
    setOn: "2026-10-20",
    by: "2026-12-13",
    process: "carry speed through 5, 6 and 7",
  },
  {
    combo: "fenHatch",
    kind: "median",
    value: 84_000,
    setOn: "2026-10-27",
    by: "2026-12-20",
  },
  {
    combo: "ashSingle",
    kind: "best",
    value: 55_900,
    setOn: "2026-09-18",
    by: "2026-10-31",
  },
];

/** The targets. */
export function makeTargets(
  stamp: Stamp,
  comboIds: Readonly<Record<ComboKey, Id>>,
  figureOn: (combo: ComboKey, kind: "best" | "median", date: string) => number | undefined,
): Target[] {
  return wanted.map(({ combo, archivedOn, ...fields }) => {
    const setAt = instantAt(fields.setOn, "22:30");
    const archivedAt = archivedOn === undefined ? undefined : instantAt(archivedOn, "22:30");
    const start = figureOn(combo, fields.kind === "median" ? "median" : "best", fields.setOn);
    return {
      ...stamp(setAt, archivedAt ?? setAt),
      comboId: comboIds[combo],
      ...fields,
      setAt,
      ...(start === undefined ? {} : { start }),
      ...(archivedAt === undefined ? {} : { archivedAt }),
    };
  });
}

/** The lap the driver measures themselves against. */
export function makeReferences(stamp: Stamp, comboIds: Readonly<Record<ComboKey, Id>>): ReferenceLap[] {
  const comboId = comboIds.fenHatch;
  const source = "fastest lap of the club's summer race";
  return [{ ...stamp(instantAt("2026-09-10", "22:20")), comboId, ms: 82_940, decimals: 3, source }];
}
