import { addDays, daysBetween, type Forecast, type Target } from "#domain";
import { forecastTarget, pageEvents, pageHistory, type SessionDigest } from "#stats";
import { type ComboKey, settingEffects } from "./combos.ts";
import type { DrivenEvening } from "./driveEvening.ts";
import { pageDigests } from "./pageDigests.ts";
import { plainBest } from "./plainReading.ts";
import { instantAt, lastDay } from "./season.ts";
import type { Stamp } from "./stamps.ts";

const method = "practice curve, version 1";
const seed = 1;
const daysLookedBack = 42;

/** A target with a date, and the combo it belongs to. */
export interface DatedTarget {
  readonly combo: ComboKey;
  readonly target: Target & { readonly kind: "best" | "median"; readonly by: string };
}

/** What the app said of a target after each session from the day it was set, scored where its date has passed. */
export function makeForecasts(
  stamp: Stamp,
  { combo, target }: DatedTarget,
  season: readonly DrivenEvening[],
): Forecast[] {
  const own = season.filter(({ evening }) => evening.combo === combo);
  const isOver = target.by < lastDay;
  const reached = isReached(target, own);
  return own.flatMap(({ evening: { date: madeOn }, session }): Forecast[] => {
    if (madeOn < target.setOn || madeOn >= target.by) return [];
    const chance = chanceOn(madeOn, target, pageDigests(season, combo, madeOn));
    if (chance === undefined) return [];
    const at = Math.max(session.updatedAt + 90_000, target.setAt + 5000);
    const stamped = isOver ? stamp(at, instantAt(addDays(target.by, 1), "19:00")) : stamp(at);
    const { id: targetId, comboId, by } = target;
    return [{ ...stamped, targetId, comboId, madeOn, by, chance, method, ...(isOver ? { reached } : {}) }];
  });
}

function isReached({ by, value }: DatedTarget["target"], own: readonly DrivenEvening[]): boolean {
  const inTime = own.filter(({ evening }) => evening.date <= by).flatMap(({ runs }) => runs);
  return (plainBest(inTime)?.ms ?? Number.POSITIVE_INFINITY) <= value;
}

/** The chance by the target's date, with sessions to come as often and as long as in the last six weeks. */
function chanceOn(
  today: string,
  target: DatedTarget["target"],
  digests: readonly SessionDigest[],
): number | undefined {
  const lately = digests.filter(({ date }) => daysBetween(date, today) < daysLookedBack);
  const days = Math.min(daysLookedBack, daysBetween(digests[0]?.date ?? today, today) + 1);
  const laps = Math.round(lately.reduce((sum, { timedDriven }) => sum + timedDriven, 0) / lately.length);
  const sessions = Math.round((daysBetween(today, target.by) * lately.length) / days);
  if (sessions === 0) return undefined;
  const history = pageHistory(digests);
  const changes = Object.values(settingEffects).map(({ from }) => from);
  const forecast = forecastTarget({
    history,
    future: Array.from({ length: sessions }, () => ({ laps })),
    targetMs: target.value,
    kind: target.kind,
    seed,
    events: pageEvents(
      history,
      today,
      changes.filter((day) => day < today),
    ),
  });
  return forecast.known ? forecast.value.chance : undefined;
}
