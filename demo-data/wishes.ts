import type { Id, ReferenceLap } from "#domain";
import { figureForTarget, levelOfPage } from "#stats";
import type { ComboKey } from "./combos.ts";
import type { DrivenEvening } from "./driveEvening.ts";
import type { DatedTarget } from "./forecasts.ts";
import { pageDigests } from "./pageDigests.ts";
import { instantAt } from "./season.ts";
import type { Stamp } from "./stamps.ts";

/** A target as the driver sets it. */
interface Wish {
  readonly combo: ComboKey;
  readonly kind: "best" | "median" | "meanOf";
  readonly laps?: number;
  readonly value: number;
  readonly setOn: string;
  readonly by: string;
  readonly process?: string;
  readonly archivedOn?: string;
}

/** Two reached and put away, two under way, one missed. */
const wishes: readonly Wish[] = [
  {
    combo: "ringHatch",
    kind: "best",
    value: 85_000,
    setOn: "2026-09-06",
    by: "2026-10-04",
    process: "one brake point for corner 5",
    archivedOn: "2026-10-01",
  },
  {
    combo: "ringHatch",
    kind: "best",
    value: 83_300,
    setOn: "2026-10-20",
    by: "2026-12-13",
    process: "carry speed through 5, 6 and 7",
  },
  { combo: "ringHatch", kind: "median", value: 84_000, setOn: "2026-10-27", by: "2026-12-20" },
  { combo: "moorSingle", kind: "best", value: 55_900, setOn: "2026-09-18", by: "2026-10-31" },
  {
    combo: "ringHatch",
    kind: "meanOf",
    laps: 5,
    value: 84_000,
    setOn: "2026-10-20",
    by: "2026-11-20",
    archivedOn: "2026-11-12",
  },
];

/** The targets, each with the app's figure on the day it was set. */
export function makeTargets(
  stamp: Stamp,
  comboIds: Readonly<Record<ComboKey, Id>>,
  season: readonly DrivenEvening[],
): DatedTarget[] {
  return wishes.map(({ combo, archivedOn, ...wish }) => {
    const setAt = instantAt(wish.setOn, "22:30");
    const archivedAt = archivedOn === undefined ? undefined : instantAt(archivedOn, "22:30");
    const page = pageDigests(season, combo, wish.setOn);
    const start = figureForTarget(wish, page, () => levelOfPage(page))?.value;
    const target = {
      ...stamp(setAt, archivedAt),
      comboId: comboIds[combo],
      ...wish,
      setAt,
      ...(start === undefined ? {} : { start }),
      ...(archivedAt === undefined ? {} : { archivedAt }),
    };
    return { combo, target };
  });
}

/** The lap the driver measures themselves against. */
export function makeReferences(stamp: Stamp, comboIds: Readonly<Record<ComboKey, Id>>): ReferenceLap[] {
  const comboId = comboIds.ringHatch;
  const source = "fastest lap of the club's summer race";
  return [{ ...stamp(instantAt("2026-09-10", "22:20")), comboId, ms: 82_940, decimals: 3, source }];
}
