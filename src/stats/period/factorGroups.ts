import { type Figure, type Id, known, unknown } from "#domain";
import { CONFIDENCE, median } from "#numbers";
import type { UsualLap } from "../combo/latestUsual.ts";
import { inSet } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { usualDecimals } from "../pace/usualDecimals.ts";
import { rankSumTest } from "../rigTests/rankSumTest.ts";
import { signedRankTest } from "../rigTests/signedRankTest.ts";
import { type Factor, valueByFactor } from "./factors.ts";
import type { Shift } from "./shift.ts";

const LEAST_LAPS = 3;
const LEAST_SESSIONS = 5;
const LEAST_UNPAIRED = 4;
const MOST_SESSIONS = 200;

/** One value of a factor ("wet") beside the most driven one ("dry"). */
export interface FactorGroup {
  readonly value: string;
  readonly laps: number;
  /** Sessions with at least three clean laps of it. */
  readonly sessions: number;
  /** Median of those sessions' medians, ms; undefined where there is no such session. */
  readonly usual: UsualLap | undefined;
  /** Against the most driven value, ms; a reason for that one itself. */
  readonly difference: Figure<FactorDifference>;
}

export interface FactorDifference extends Shift {
  /** Within the same sessions, or between sessions, each against the level the practice curve gives for its day. */
  readonly basis: "same sessions" | "other sessions";
  readonly sessions: number;
}

/** The groups of one factor, the most driven first. */
export interface FactorGroups {
  readonly factor: Factor;
  readonly groups: readonly FactorGroup[];
}

interface Part {
  readonly digest: SessionDigest;
  readonly value: string;
  readonly ms: number;
}

/**
 * Clean laps by what they were driven with. Where two values were driven in the same five sessions, those are compared
 * with themselves (signed-rank test), else session against session, each less the level that the practice curve gives
 * for it (rank-sum test), so that learning over the weeks is not taken for the factor's doing. Not a test: the driver
 * chose when to drive what.
 * @param digests of the period; the latest 200 are looked at
 * @param levelOf level of practice at a session, ms
 * @returns one group only where nothing varies
 */
export function factorGroups(
  digests: readonly SessionDigest[],
  factor: Factor,
  levelOf: (sessionId: Id) => number,
): FactorGroups {
  const laps = new Map<string, number>();
  const parts: Part[] = [];
  for (const digest of digests.slice(-MOST_SESSIONS)) {
    for (const [value, times] of timesByValue(digest, factor)) {
      laps.set(value, (laps.get(value) ?? 0) + times.length);
      const ms = median(times);
      if (times.length >= LEAST_LAPS && ms !== undefined) parts.push({ digest, value, ms });
    }
  }
  const values = [...laps].toSorted((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const partsOf = (value: string) => parts.filter((part) => part.value === value);
  const [usual] = values[0] ?? [""];
  return {
    factor,
    groups: values.map(([value, count]) => {
      const own = partsOf(value);
      return {
        value,
        laps: count,
        sessions: own.length,
        usual: usualOf(own),
        difference:
          value === usual ? unknown({ because: "the most driven" }) : against(own, partsOf(usual), levelOf),
      };
    }),
  };
}

function usualOf(own: readonly Part[]): UsualLap | undefined {
  const ms = median(own.map((part) => part.ms));
  if (ms === undefined) return undefined;
  return { ms, decimals: usualDecimals(own.map(({ digest }) => ({ decimals: digest.pace.medianDecimals }))) };
}

function against(own: readonly Part[], other: readonly Part[], levelOf: (id: Id) => number) {
  const there = new Map(other.map(({ digest, ms }) => [digest.sessionId, ms]));
  const pairs = own.flatMap(({ digest, ms }) => {
    const beside = there.get(digest.sessionId);
    return beside === undefined ? [] : [ms - beside];
  });
  if (pairs.length >= LEAST_SESSIONS)
    return differenceOf(signedRankTest(pairs, CONFIDENCE), "same sessions", pairs.length);
  const fewest = Math.min(own.length, other.length);
  if (fewest < LEAST_UNPAIRED)
    return unknown({
      needs: LEAST_UNPAIRED,
      of: "session of each kind",
      each: { needs: LEAST_LAPS, of: "clean lap" },
      has: fewest,
    });
  const aboveLevel = ({ digest, ms }: Part) => ms - levelOf(digest.sessionId);
  const test = rankSumTest(own.map(aboveLevel), other.map(aboveLevel), CONFIDENCE);
  return differenceOf(test, "other sessions", own.length + other.length);
}

function differenceOf(
  test: Shift | undefined,
  basis: FactorDifference["basis"],
  sessions: number,
): Figure<FactorDifference> {
  const { estimate, low, high } = test ?? { estimate: 0, low: 0, high: 0 };
  return known({ estimate, low, high, basis, sessions });
}

/** Clean times of a session by the factor's value; runs in which something else differs as well stay out. */
function timesByValue(digest: SessionDigest, factor: Factor): Map<string, number[]> {
  const byRun = digest.runFacts.map((facts) => valueByFactor[factor](facts, digest.focus));
  const times = new Map<string, number[]>();
  const isCounted = inSet(digest, "practice");
  digest.times.forEach((ms, lap) => {
    const value = byRun[digest.runs[lap] as number];
    if (value === undefined || !isCounted(lap)) return;
    const list = times.get(value) ?? [];
    list.push(ms);
    times.set(value, list);
  });
  return times;
}
