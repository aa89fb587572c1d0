import { newestReference, onPage } from "#combo";
import {
  addCounts,
  type CalendarDate,
  type Figure,
  type Id,
  isTimeKind,
  type ReferenceLap,
  type Target,
} from "#domain";
import { CONFIDENCE, median } from "#numbers";
import type { DatedBest } from "../bests/datedBest.ts";
import { datedBests } from "../bests/datedBests.ts";
import { type ComboQuestion, type ComboStanding, comboStanding } from "../combo/comboStanding.ts";
import { latestUsual } from "../combo/latestUsual.ts";
import { nextTarget, type TargetState } from "../combo/targetStates.ts";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { LevelGain, LevelPoint } from "../level/levelOver.ts";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";
import { lapsUntilWithin } from "./lapsUntilWithin.ts";
import { type SeasonLevel, seasonLevel } from "./seasonLevel.ts";

/** "On the pace" of a new combo: within this share of the best so far. */
const ON_THE_PACE = 0.01;

/** As many sessions as a small picture has room for. */
const MOST_USUALS = 12;

/** One combo with all that its line is made from. */
export interface ComboForLine extends Omit<ComboQuestion, "today"> {
  readonly references: readonly ReferenceLap[];
  /** From `seasonLevel`, where it is known already. */
  readonly season?: SeasonLevel | undefined;
}

/** How far it is from where a combo stands to what the driver measures it against. */
export interface ToGo {
  readonly to: "target" | "reference";
  /** The figure of today less what is wanted, ms; below 0 it lies beyond it. */
  readonly ms: number;
  readonly percent: number;
}

/** One combo's line in the table across combos; percentages compare where lap times do not. */
export interface ComboLine {
  readonly comboId: Id;
  /** The first session on whatever page, and the last one of the present page. */
  readonly firstOn: CalendarDate;
  readonly firstAt: number;
  readonly lastOn: CalendarDate;
  readonly lastAt: number;
  readonly sessions: number;
  /** Laps driven. */
  readonly laps: number;
  readonly drivingMs: number;
  readonly best: DatedBest | undefined;
  /** Median over sessions of the scatter in percent of the median. */
  readonly scatterPercent: number | undefined;
  /** Median of the latest session with five pace laps less the best, in percent of the best. */
  readonly usualToBestPercent: number | undefined;
  readonly cleanShare: Share | undefined;
  readonly mistakesPer100: number;
  /** Timed laps until the first clean lap within 1 % of the best of today. */
  readonly lapsUntilOnThePace: number | undefined;
  /** Best less the newest reference lap, in percent of it. */
  readonly toReferencePercent: number | undefined;
  /** Median over sessions of the scatter, ms. */
  readonly scatterMs: number | undefined;
  /** How far the level has moved over the last twelve weeks, and its line through them; none where it is not known. */
  readonly gain: Figure<LevelGain>;
  readonly level: readonly LevelPoint[];
  /** Usual laps of the last sessions with one, ms: what there is before there is a level. */
  readonly usuals: readonly { readonly date: CalendarDate; readonly ms: number }[];
  readonly nextTarget: Target | undefined;
  /** To the next target that is a lap time, else to the newest reference lap. */
  readonly toGo: ToGo | undefined;
}

/**
 * The combos side by side, for those who change circuit often; the one driven last comes first.
 * Each is told by its present page.
 * @param combos those without a session on it are left out
 */
export function acrossCombos(combos: readonly ComboForLine[], today: CalendarDate): ComboLine[] {
  return combos
    .flatMap((combo) => {
      const standing = comboStanding({ ...combo, today });
      const driven = combo.digests.filter(isDrivenSession).toSorted((a, b) => a.startedAt - b.startedAt);
      const digests = onPage(standing.page, driven);
      const [first, last] = [driven[0], digests.at(-1)];
      return first === undefined || last === undefined
        ? []
        : [lineOf({ ...combo, digests, standing }, first, last, today)];
    })
    .toSorted((a, b) => b.lastAt - a.lastAt);
}

function lineOf(
  { comboId, digests, references, standing, season }: ComboForLine & { readonly standing: ComboStanding },
  first: SessionDigest,
  last: SessionDigest,
  today: CalendarDate,
): ComboLine {
  const sum = (field: "mistakes" | "drivingMs" | "clean" | "timed") =>
    digests.reduce((total, digest) => total + digest[field], 0);
  const laps = addCounts(digests.map((digest) => digest.counts)).driven;
  const best = datedBests(digests).at(-1);
  const reference = newestReference(references);
  const { history, targets } = standing;
  const { gain, line: level } = season ?? seasonLevel(history, today);
  const scatters = digests.flatMap(({ pace: { consistency } }) =>
    consistency.known ? [consistency.value] : [],
  );
  return {
    comboId,
    firstOn: first.date,
    firstAt: first.startedAt,
    lastOn: last.date,
    lastAt: last.startedAt,
    sessions: digests.length,
    laps,
    drivingMs: sum("drivingMs"),
    best,
    scatterPercent: median(scatters.map(({ percent }) => percent)),
    scatterMs: median(scatters.map(({ scatterMs }) => scatterMs)),
    usualToBestPercent: percentOver(latestUsual(digests)?.ms, best?.ms),
    cleanShare: wilsonInterval(sum("clean"), sum("timed"), CONFIDENCE),
    mistakesPer100: (100 * sum("mistakes")) / laps,
    lapsUntilOnThePace:
      best === undefined ? undefined : lapsUntilWithin(digests, best.ms * (1 + ON_THE_PACE)),
    toReferencePercent: percentOver(best?.ms, reference?.ms),
    gain,
    level,
    usuals: history.slice(-MOST_USUALS).map(({ date, medianMs }) => ({ date, ms: medianMs })),
    nextTarget: nextTarget(targets),
    toGo: toTarget(targets) ?? (best && reference && distance("reference", best.ms, reference.ms)),
  };
}

/** From the figure of today to the next target, where that is a lap time. */
function toTarget(targets: readonly TargetState[]): ToGo | undefined {
  const next = nextTarget(targets);
  const now = targets.find(({ target }) => target === next)?.now;
  if (next === undefined || now === undefined) return undefined;
  return isTimeKind(next.kind) ? distance("target", now.value, next.value) : undefined;
}

function distance(to: ToGo["to"], now: number, wanted: number): ToGo {
  return { to, ms: now - wanted, percent: (100 * (now - wanted)) / wanted };
}

function percentOver(value: number | undefined, of: number | undefined): number | undefined {
  return value === undefined || of === undefined ? undefined : (100 * (value - of)) / of;
}
