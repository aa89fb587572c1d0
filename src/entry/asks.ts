import { aboutRemark, formatLapTime, formatPercent, isClean, latestMs } from "#domain";
import type { Ask, Entry, EntryContext, EntryForm, TypedLap } from "./context.ts";
import { type Ground, groundOf, type LikeTimes } from "./grounds.ts";
import { judge } from "./judge.ts";
import { knownTimes } from "./knownTimes.ts";
import type { LapTimes } from "./lapTimes.ts";
import type { Sectors } from "./sectors.ts";
import { wholeTime } from "./wholeTime.ts";
import type { ReadTime } from "./word.ts";

const farUnderPb = 0.015;
/** A lap completed from its last digits is looked at sooner. */
const farUnderPbShort = 0.005;
/** A PB that lies so far under the usual is kept, and moves nothing. */
const farUnderUsual = 0.1;

type Read = Pick<LapTimes, "form" | "mayLackMinute" | "found" | "isUnclear">;

/**
 * The reasons for which a lap is only taken at a second Enter: it would beat the PB by more than 1.5 %, a short form
 * would beat it by more than 0.5 % or could as well be another time, it lies beyond the usual, the first lap has only
 * seconds and may lack its minute, or times are taken for the sectors of a layout that nothing is known of.
 * @param like sorted times of the session's laps like this one
 */
export function asksOf(lap: TypedLap, read: Read, context: EntryContext, like: LikeTimes): Ask[] {
  const { ms, decimals = 3 } = lap;
  if (ms === undefined) return [];
  const ground = groundOf(context, like);
  const asks: Ask[] = [];
  if (read.found !== undefined) asks.push(sectorsAsk(read.found));
  if (context.isPractice && isClean(lap)) asks.push(...pbAsks({ ms, decimals }, read, context, ground));
  const oddity = judge(lap, context.isSlow ? { ...ground, own: undefined } : ground);
  if (oddity !== undefined) {
    const isBelieved = ms < ground.fastest && !ground.isSure;
    asks.push({ ...ask(oddity.why, oddity.fact), ...(!isBelieved && { isOdd: true }) });
  }
  if (read.mayLackMinute)
    asks.push({
      why: "minute left out",
      fact: `This is read as ${formatLapTime(ms, decimals)} s, under a minute.`,
      instead: `, or write ${wholeTime(ms + 60_000, decimals)} with its minute`,
    });
  return asks;
}

/** The same reasons for one time on its own, without a remark: the best or the usual lap of a whole run. */
export function asksOfTime({ ms, decimals, form, isUnclear }: ReadTime, context: EntryContext): Ask[] {
  const read = { form, isUnclear, mayLackMinute: false };
  return asksOf({ ms, decimals, remarks: [] }, read, context, knownTimes(context));
}

/** Whether a lap that is stored as read was confirmed as an odd one. */
export function isOdd({ asks }: Pick<Entry, "asks">): boolean {
  return asks.some((one) => one.isOdd);
}

/** How a line is taken: by the Enter key, or by the pad's Add. */
export type Hand = "keys" | "pad";

/** All that is asked about a line, with what the second Enter or Add says; undefined where nothing is. */
export function questionOf({ asks }: Pick<Entry, "asks">, hand: Hand = "keys"): string | undefined {
  const parts = asks.map((one, index) =>
    index < asks.length - 1 && isPlain(one) ? one.fact : askInFull(one, hand),
  );
  return parts.length === 0 ? undefined : parts.join(" ");
}

function isPlain({ again, instead }: Ask): boolean {
  return again === undefined && instead === undefined;
}

function askInFull({ fact, before = fact, again, instead = "" }: Ask, hand: Hand): string {
  const press = hand === "pad" ? "Press Add again" : "Enter again";
  const right = hand === "pad" ? "to keep it" : "if it is right";
  return `${before} ${press} ${again ?? right}${instead}.`;
}

/** All that is the matter with a line, alone; undefined where nothing is. */
export function factsOf({ asks }: Pick<Entry, "asks">): string | undefined {
  return asks.length === 0 ? undefined : asks.map(({ fact }) => fact).join(" ");
}

function ask(why: Ask["why"], fact: string): Ask {
  return { why, fact };
}

const out = aboutRemark("out");
const off = aboutRemark("off");
const readAsOut = `“${out.letter}” is read as ${out.named}`;

/** The question about an out lap at a corner. */
export const askOutOrOff: Ask = {
  why: "out or off",
  fact: `${readAsOut}; ${off.word} is ${off.letter}.`,
  before: `${readAsOut}.`,
  instead: `, or write ${off.letter} for ${off.word}`,
};

function sectorsAsk({ times, sum }: Sectors): Ask {
  return {
    why: "sectors found",
    fact: `Read as ${times.length} sectors of one lap, ${sum} together.`,
    again: `if this layout has ${times.length} sectors`,
    instead: "; laps go one a line",
  };
}

function pbAsks(
  { ms, decimals }: { readonly ms: number; readonly decimals: number },
  { form, isUnclear }: { readonly form: EntryForm; readonly isUnclear?: boolean | undefined },
  { pbMs, pbDecimals }: EntryContext,
  { fastest, isSure }: Ground,
): Ask[] {
  const shown = formatLapTime(ms, decimals);
  if (pbMs === undefined)
    return form === "short"
      ? [ask("short form PB", `The digits were completed to ${shown}, your first PB here.`)]
      : [];
  if (latestMs({ ms, decimals }) >= pbMs) return [];
  const pb = formatLapTime(pbMs, pbDecimals ?? 3);
  const share = (pbMs - ms) / pbMs;
  const asks: Ask[] = [];
  if (share > farUnderPb) {
    const isOddPb = isSure && ms < fastest * (1 - farUnderUsual);
    const fact = `${shown} would beat your PB, ${pb}, by ${formatPercent(share)}.`;
    asks.push({ ...ask("far under PB", fact), ...(isOddPb && { isOdd: true }) });
  }
  if (form === "short" && (share > farUnderPbShort || isUnclear))
    asks.push(ask("short form PB", `The digits were completed to ${shown}, a new PB (before: ${pb}).`));
  return asks;
}
