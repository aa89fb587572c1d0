import { formatLapTime, formatSeconds, lapRange, type Reading } from "#domain";
import { readFullForm } from "./fullForms.ts";
import { refuseShape } from "./readWord.ts";
import { quoted, refuse, shifted } from "./refuse.ts";
import { refuseOutside } from "./refuseOutside.ts";
import type { ReadTime, Word } from "./word.ts";

/** Sector times with their sum. */
export interface Sectors {
  readonly times: readonly number[];
  /** How many decimals each was typed with. */
  readonly timesDecimals: readonly number[];
  readonly ms: number;
  /** The fewest decimals among them: the sum is known no better. */
  readonly decimals: number;
  /** The sum with every decimal that was typed, as it is said: "51.780". */
  readonly sum: string;
  /** How far the sum may lie from a lap time typed beside it: half of each last digit. */
  readonly toleranceMs: number;
}

const baseToleranceMs = 2;

/** Half of the last digit of a time with so many decimals, in ms. */
function halfOfLastDigit(decimals: number): number {
  return 10 ** (3 - decimals) / 2;
}

/** Reads words as sector times: seconds with a point, or with minutes. Never completed, never relative. */
export function readSectors(words: readonly Word[], displayDecimals: number): Reading<Sectors> {
  const read: ReadTime[] = [];
  for (const word of words) {
    const one = readSector(word.text, displayDecimals);
    if (!one.ok) return { ok: false, problem: shifted(one.problem, word.start) };
    read.push(one);
  }
  const ms = read.reduce((sum, one) => sum + one.ms, 0);
  const [first] = words;
  const last = words.at(-1);
  if (ms > lapRange.most && first !== undefined && last !== undefined)
    return refuse(
      first.start,
      last.start + last.text.length - first.start,
      `The sectors add up to ${formatLapTime(ms, 0)}, which is over 24 hours.`,
      "Put right the one that is wrong.",
    );
  return {
    ok: true,
    times: read.map((one) => one.ms),
    timesDecimals: read.map((one) => one.decimals),
    ms,
    decimals: Math.min(...read.map(({ decimals }) => decimals)),
    sum: formatLapTime(ms, Math.max(...read.map(({ decimals }) => decimals))),
    toleranceMs: read.reduce((sum, { decimals }) => sum + halfOfLastDigit(decimals), 0),
  };
}

function readSector(text: string, displayDecimals: number): Reading<ReadTime> {
  const full = readFullForm(text);
  if (full !== undefined) return full.ok ? (refuseOutside(full.ms, text) ?? full) : full;
  if (!/^\d+$/.test(text)) return refuseShape(text);
  const whole = text.length > displayDecimals ? text.slice(0, -displayDecimals) : text;
  return refuse(
    0,
    text.length,
    `The sector ${quoted(text)} has no point.`,
    `Write ${text.length <= 2 ? `${text}.0` : `${whole.slice(0, 6)}.${text.slice(whole.length, whole.length + 3) || "0"}`}, for example.`,
  );
}

/**
 * Checks the sum of the sectors against the lap time: 2 ms plus half of each last typed digit may lie between.
 * @returns a refusal, or undefined when they agree
 */
export function checkSum(time: ReadTime, timeWord: Word, sectors: Sectors) {
  const difference = sectors.ms - time.ms;
  if (Math.abs(difference) <= baseToleranceMs + sectors.toleranceMs + halfOfLastDigit(time.decimals))
    return undefined;
  const { sum } = sectors;
  return refuse(
    timeWord.start,
    timeWord.text.length,
    `The sectors add up to ${sum}, ${formatSeconds(Math.abs(difference))} ${difference > 0 ? "more" : "less"} than ${formatLapTime(time.ms, time.decimals)}.`,
    `Put right the one that is wrong, or leave out the sectors, or the lap time: then it is ${sum}.`,
  );
}
