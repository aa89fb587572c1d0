import { aboutRemark, type Problem } from "#domain";
import { askOutOrOff, asksOf } from "./asks.ts";
import { fold, placed, visiblePart } from "./characters.ts";
import type { Ask, EntryContext, EntryReading, TypedLap } from "./context.ts";
import { type KnownTimes, knownTimes } from "./knownTimes.ts";
import { type LapTimes, readLapTimes } from "./lapTimes.ts";
import { readNote, strokeAt } from "./note.ts";
import type { WordOptions } from "./readWord.ts";
import { quoted, refuse } from "./refuse.ts";
import type { Base, BaseName } from "./relative.ts";
import { type EntryParts, splitEntry } from "./splitEntry.ts";
import { askUnit, unclearUnit } from "./unitOrSpin.ts";
import { isUsualUnsure } from "./usualLap.ts";

const out = aboutRemark("out");

/** The problem of an empty line: always this very object, so that a screen can keep quiet about it. */
export const nothingTyped: Problem = {
  at: 0,
  length: 0,
  wrong: "Nothing is typed yet.",
  right: "Write a lap time such as 1:23.456.",
};

/**
 * Reads a whole entry line: a lap time in any form, or sectors, or a lap time with its sectors; then remarks; then a
 * note behind a stroke. Remarks alone are a lap without a time. Never throws on any text.
 * @returns the lap to store, how it was written, and the reasons to want a second Enter; or what is wrong
 */
export function parseEntry(text: string, context: EntryContext): EntryReading {
  return readEntry(text, context, knownTimes(context));
}

/** The same, with the session's times already sorted. */
export function readEntry(text: string, context: EntryContext, times: KnownTimes): EntryReading {
  const { start, end } = visiblePart(text);
  if (start === end) return { ok: false, problem: nothingTyped };
  const read = readLine(text, context, times);
  return read.ok || context.isCounted !== true || !isCount(text) ? read : refuseCount(text, start, end);
}

/** Tries of a drill, written as `readCount` takes them and no lap time ever is. */
const isCount = (text: string) => /^\s*\d{1,3}\s*(?:of|\/)\s*\d{1,3}\s*$/i.test(text);

function refuseCount(text: string, start: number, end: number) {
  return refuse(
    start,
    end - start,
    `${quoted(text.trim())} is a count, and no lap time.`,
    "Type it in the plan above, beside “Count”; on a phone that is under “Line”.",
  );
}

function readLine(text: string, context: EntryContext, times: KnownTimes): EntryReading {
  const { start, end } = visiblePart(text);
  const stroke = strokeAt(text);
  const note = readNote(text, stroke);
  if (!note.ok) return note;
  const folding = fold(text.slice(0, stroke));
  if (!folding.ok) return folding;
  const { text: head, places } = folding.folded;
  if (head === "")
    return refuse(
      start,
      end - start,
      "A note needs a lap before it.",
      `Write the time or a remark first: 1:23.456 / note, or ${out.letter} / note for ${out.named} without a time.`,
    );
  const lap = readHead(head, context, times);
  if (!lap.ok) return { ok: false, problem: placed(lap.problem, places) };
  const typed: TypedLap = note.note === undefined ? lap.lap : { ...lap.lap, note: note.note };
  return { ...lap, lap: typed };
}

function readHead(head: string, context: EntryContext, times: KnownTimes): EntryReading {
  const parts = splitEntry(head, context.corners);
  if (!parts.ok) return parts;
  const [first, ...rest] = parts.times;
  if (first === undefined)
    return { ok: true, lap: { remarks: parts.remarks }, form: "no time", asks: asksOfHead(head, parts) };
  const read = readLapTimes([first, ...rest], optionsOf(parts, context, times), context);
  if (!read.ok) return read;
  const lap = lapOf(read, parts);
  return {
    ok: true,
    lap,
    form: read.form,
    asks: [...asksOfHead(head, parts), ...asksOf(lap, read, context, times)],
  };
}

/** What is asked about the remarks, whatever the time. */
function asksOfHead(head: string, { isOutAtCorner }: EntryParts): Ask[] {
  return [...(unclearUnit(head) === undefined ? [] : [askUnit]), ...(isOutAtCorner ? [askOutOrOff] : [])];
}

function lapOf({ ms, decimals, sectors, sectorDecimals }: LapTimes, { remarks }: EntryParts): TypedLap {
  if (sectors === undefined || sectorDecimals === undefined) return { ms, decimals, remarks };
  return { ms, decimals, sectors, sectorDecimals, remarks };
}

function optionsOf({ remarks }: EntryParts, context: EntryContext, times: KnownTimes): WordOptions {
  const [base, baseName] = baseOf(context);
  return {
    nearMs: context.usualMs,
    mustTypeTens: remarks.some(({ kind }) => aboutRemark(kind).mistake || aboutRemark(kind).apart),
    isUsualUnsure: isUsualUnsure(times, context),
    displayDecimals: context.displayDecimals,
    base,
    baseName,
  };
}

function baseOf(context: EntryContext): readonly [Base | undefined, BaseName] {
  const base = (ms: number | undefined, decimals: number | undefined) =>
    ms === undefined ? undefined : { ms, decimals: decimals ?? 3 };
  if (context.relativeTo === "pb") return [base(context.pbMs, context.pbDecimals), "your PB"];
  if (context.relativeTo === "target") return [base(context.targetMs, 3), "the target"];
  return [base(context.previousMs, context.previousDecimals), "the lap before"];
}
