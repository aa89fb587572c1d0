import type { CalendarDate, Id, ReferenceLap } from "#domain";
import { median } from "../sample/median.ts";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";
import { bestLine } from "./bestLine.ts";
import { lapFlags } from "./digestFlags.ts";
import { addCounts } from "./lapPlaces.ts";
import { NO_TIME, type SessionDigest } from "./sessionDigest.ts";

const CONFIDENCE = 0.9;
/** "On the pace" of a new combo: within this share of the best so far. */
const ON_THE_PACE = 0.01;

/** One combo's line in the table across combos; percentages compare where lap times do not. */
export interface ComboLine {
  readonly comboId: Id;
  readonly lastOn: CalendarDate;
  readonly sessions: number;
  /** Laps driven. */
  readonly laps: number;
  readonly drivingMs: number;
  readonly best: { readonly ms: number; readonly decimals: number } | undefined;
  /** Median over sessions of the scatter in percent of the median. */
  readonly scatterPercent: number | undefined;
  /** Median of the latest session with five pace laps less the best, in percent of the best. */
  readonly usualToBestPercent: number | undefined;
  readonly cleanShare: Share | undefined;
  readonly mistakesPer100: number | undefined;
  /** Timed laps until the first clean lap within 1 % of the best of today. */
  readonly lapsUntilOnThePace: number | undefined;
  /** Best less the newest reference lap, in percent of it. */
  readonly toReferencePercent: number | undefined;
}

/**
 * The combos side by side, for those who change circuit often; the one driven last comes first.
 * @param combos for each combo the digests of its present page and its reference laps; combos without a session are
 * left out
 */
export function acrossCombos(
  combos: readonly {
    readonly comboId: Id;
    readonly digests: readonly SessionDigest[];
    readonly references: readonly ReferenceLap[];
  }[],
): ComboLine[] {
  return combos
    .flatMap(({ comboId, digests, references }) => {
      const ordered = digests.toSorted((a, b) => a.startedAt - b.startedAt);
      const last = ordered.at(-1);
      return last === undefined
        ? []
        : [{ at: last.startedAt, line: lineOf(comboId, ordered, last, references) }];
    })
    .toSorted((a, b) => b.at - a.at)
    .map(({ line }) => line);
}

function lineOf(
  comboId: Id,
  digests: readonly SessionDigest[],
  last: SessionDigest,
  references: readonly ReferenceLap[],
): ComboLine {
  const sum = (field: "mistakes" | "drivingMs" | "clean" | "timed") =>
    digests.reduce((total, digest) => total + digest[field], 0);
  const laps = addCounts(digests.map((digest) => digest.counts)).driven;
  const best = bestLine(digests.flatMap((digest) => digest.bestCandidates)).at(-1);
  const usual = digests.findLast((digest) => digest.pace.medianForTrend !== undefined)?.pace.medianForTrend;
  const reference = references.toSorted((a, b) => b.updatedAt - a.updatedAt)[0];
  const percentOver = (value: number | undefined, of: number | undefined) =>
    value === undefined || of === undefined ? undefined : (100 * (value - of)) / of;
  return {
    comboId,
    lastOn: last.date,
    sessions: digests.length,
    laps,
    drivingMs: sum("drivingMs"),
    best: best === undefined ? undefined : { ms: best.ms, decimals: best.decimals },
    scatterPercent: median(
      digests.flatMap(({ pace: { consistency } }) => (consistency.known ? [consistency.value.percent] : [])),
    ),
    usualToBestPercent: percentOver(usual, best?.ms),
    cleanShare: wilsonInterval(sum("clean"), sum("timed"), CONFIDENCE),
    mistakesPer100: laps === 0 ? undefined : (100 * sum("mistakes")) / laps,
    lapsUntilOnThePace: best === undefined ? undefined : lapsUntil(digests, best.ms * (1 + ON_THE_PACE)),
    toReferencePercent: percentOver(best?.ms, reference?.ms),
  };
}

/** Timed laps up to and with the first clean one at the limit or under it; laps not written down count too. */
function lapsUntil(digests: readonly SessionDigest[], limit: number): number | undefined {
  let before = 0;
  for (const digest of digests) {
    let timed = 0;
    for (let i = 0; i < digest.times.length; i++) {
      const flag = digest.flags[i] ?? 0;
      const ms = digest.times[i] ?? NO_TIME;
      if ((flag & lapFlags.timed) !== 0) timed++;
      if ((flag & lapFlags.clean) !== 0 && ms !== NO_TIME && ms <= limit) return before + timed;
    }
    before += digest.timedDriven;
  }
  return undefined;
}
