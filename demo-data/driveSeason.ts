import type { Id } from "#domain";
import { type ComboKey, comboKeys, combos } from "./combos.ts";
import { type DrivenEvening, driveEvening } from "./driveEvening.ts";
import { evenings } from "./evenings.ts";
import { driverOfPage, type Practice, practiceOn } from "./levels.ts";
import { newPage } from "./newPage.ts";
import type { Rigs } from "./rigs.ts";
import { seeds } from "./season.ts";
import { mixedChance, type Stamp } from "./stamps.ts";

/** Drives all evenings in order; practice and what runs take over go on from evening to evening of a combo. */
export function driveSeason(
  comboIds: Readonly<Record<ComboKey, Id>>,
  rigs: Rigs,
  testId: Id,
  stamp: Stamp,
): DrivenEvening[] {
  const chances = Object.fromEntries(comboKeys.map((key) => [key, mixedChance(seeds[key])]));
  const driven: DrivenEvening[] = [];
  for (const evening of evenings) {
    const before = driven.findLast((one) => one.evening.combo === evening.combo);
    const testRuns = driven.reduce((sum, evening) => sum + evening.testRuns, 0);
    driven.push(
      driveEvening(
        {
          evening,
          comboId: comboIds[evening.combo],
          practice: practiceAfter(before, evening.combo, evening.date),
          carried: before?.carried ?? {},
          rigs,
          testId,
          testRuns,
        },
        stamp,
        chances[evening.combo] ?? mixedChance(seeds.ids),
      ),
    );
  }
  return driven;
}

/** Number of the page, from 0, that a combo's evening belongs to. */
export function pageOfEvening(combo: ComboKey, date: string): number {
  return combo === newPage.combo && date >= newPage.date ? 1 : 0;
}

function practiceAfter(before: DrivenEvening | undefined, combo: ComboKey, date: string): Practice {
  const page = pageOfEvening(combo, date);
  const driver = driverOfPage(combos[combo], page);
  if (before === undefined || pageOfEvening(combo, before.evening.date) !== page)
    return practiceOn({ driver, laps: 0 }, date);
  return practiceOn({ ...before.practice, laps: before.lapsBefore + before.laps }, date);
}
