import { isClean, latestMs } from "#domain";
import { isOdd } from "./asks.ts";
import { fold } from "./characters.ts";
import type { Entry, EntryContext, EntryReading } from "./context.ts";
import { type CopiedRow, readCopiedRow, whyNoLap, whyNoRow } from "./copiedRow.ts";
import { type KnownTimes, knownTimes, learn } from "./knownTimes.ts";
import { strokeAt } from "./note.ts";
import { nothingTyped, readEntry } from "./parseEntry.ts";
import { refuse } from "./refuse.ts";
import { askUnit, refuseUnit, unclearUnit } from "./unitOrSpin.ts";
import { usualLap } from "./usualLap.ts";

/** One pasted line and what it was read as. */
export interface PasteLine {
  /** Counted from 1, empty lines included. */
  readonly lineNumber: number;
  /** The line as pasted. */
  readonly text: string;
  readonly reading: EntryReading;
}

const lineEnd = /\r\n|[\n\r\u0085\u2028\u2029]/;
const counter = /^\s*\d{1,4}(?:[.)] +|[.)]?\t+)(?=\S)/;

/**
 * Reads pasted text, one lap a line. Short and relative forms are completed in order, as if each line had been typed
 * after the one before. Tabs count as spaces; empty lines are passed over; a counter in front ("3. ", "3) ", "3" and
 * a tab) is left out where the rest is a time in full or a line of sectors. A row copied from the ledger is the lap of
 * that row. A time with the unit s behind it is refused: nobody is asked line by line whether it was a spin. No line is
 * dropped: what cannot be read comes back with its problem.
 */
export function parsePaste(text: string, context: EntryContext): { readonly lines: readonly PasteLine[] } {
  const times = knownTimes(context);
  let now = context;
  const lines: PasteLine[] = [];
  for (const [index, line] of text.split(lineEnd).entries()) {
    const reading = readLine(line, now, times);
    if (!reading.ok && reading.problem === nothingTyped) continue;
    lines.push({ lineNumber: index + 1, text: line, reading });
    if (reading.ok) now = after(reading, now, times);
  }
  return { lines };
}

function readLine(line: string, context: EntryContext, times: KnownTimes): EntryReading {
  const copied = line.includes("\t") ? readCopiedRow(line) : undefined;
  const isCopied = copied !== undefined;
  const reading = isCopied
    ? asCopied(readCopied(copied, context, times), copied, line)
    : readTyped(line, context, times);
  const isUnread = !isCopied && !reading.ok && reading.problem !== nothingTyped;
  const whyNot = isUnread ? whyNoRow(line) : undefined;
  if (whyNot !== undefined) return refuse(0, line.length, whyNot.wrong, whyNot.right);
  if (!reading.ok || !reading.asks.includes(askUnit)) return reading;
  const head = fold(withSpaces(line).slice(0, strokeAt(line)));
  return refuseUnit(line, (head.ok ? unclearUnit(head.folded.text) : undefined) ?? "the time");
}

function readTyped(line: string, context: EntryContext, times: KnownTimes): EntryReading {
  const why = whyNoLap(line);
  if (why !== undefined) return refuse(0, line.length, why.wrong, why.right);
  const whole = readEntry(withSpaces(line), context, times);
  const counted = whole.ok ? null : counter.exec(line);
  if (counted === null) return whole;
  // Blanks for the counter keep every place in the line where it was.
  const rest = " ".repeat(counted[0].length) + withSpaces(line.slice(counted[0].length));
  const reading = readEntry(rest, context, times);
  return reading.ok && (reading.form === "full" || reading.form === "sectors") ? reading : whole;
}

/**
 * A copied row with the decimals its sectors are printed with. A lap that does not say theirs has them printed to the
 * thousandth, however well they were known: where the sum does not allow that, they stay unsaid.
 */
function readCopied(
  { line, lineWithoutNoughts }: CopiedRow,
  context: EntryContext,
  times: KnownTimes,
): EntryReading {
  const printed = readEntry(line, context, times);
  if (printed.ok || lineWithoutNoughts === undefined) return printed;
  const reading = readEntry(lineWithoutNoughts, context, times);
  if (!reading.ok) return reading;
  const { sectorDecimals: _, ...lap } = reading.lap;
  return { ...reading, lap };
}

/** A copied row is read in other words than it has: what is wrong there is wrong with the row. */
function asCopied(reading: EntryReading, said: CopiedRow, row: string): EntryReading {
  if (!reading.ok) return { ok: false, problem: { ...reading.problem, at: 0, length: row.length } };
  return {
    ...reading,
    lap: {
      ...reading.lap,
      ...(said.decimals !== undefined && { decimals: said.decimals }),
      ...(said.isNotBest && { isNotBest: true }),
    },
    isFromMemory: said.isFromMemory,
  };
}

/** The line with spaces for the tabs before its note. */
function withSpaces(line: string): string {
  const stroke = strokeAt(line);
  return line.slice(0, stroke).replaceAll("\t", " ") + line.slice(stroke);
}

/** What is known when the next line is read. Adds a clean lap to the sorted times, unless it is an odd one. */
function after(entry: Entry, context: EntryContext, times: KnownTimes): EntryContext {
  const { lap } = entry;
  const sectors = context.sectors ?? lap.sectors?.length;
  const next = { ...context, sectors, previousMs: lap.ms, previousDecimals: lap.decimals };
  if (!isClean(lap) || isOdd(entry)) return next;
  learn(times, lap.ms);
  const isPb =
    context.isPractice &&
    lap.isNotBest !== true &&
    (context.pbMs === undefined || latestMs({ ms: lap.ms, decimals: lap.decimals ?? 3 }) < context.pbMs);
  const best = isPb
    ? { pbMs: lap.ms, pbDecimals: lap.decimals }
    : { pbMs: next.pbMs, pbDecimals: next.pbDecimals };
  const now = { ...next, ...best };
  return { ...now, usualMs: usualLap(times, now) ?? context.usualMs };
}
