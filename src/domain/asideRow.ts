import { canonicalText } from "./canonicalText.ts";
import { plainValue } from "./plainValue.ts";
import type { Id } from "./rows.ts";

/**
 * What was to be a row and is none: it holds something that cannot be right, or could not be brought to a newer schema.
 * Kept as it was until the driver mends it or deletes it for good.
 */
export interface AsideRow {
  /** Made from what it holds, so that the same row, set aside twice, is one. */
  readonly id: Id;
  /** Its table; `laps` for a lap, which then names its run by `runId`. */
  readonly table: string;
  /** Schema it was written with. */
  readonly schema: number;
  /** What is wrong, as a check or a migration said it: "date: not a day of the calendar". */
  readonly why: string;
  /** As it was. Absent once it was mended or deleted for good: no older copy then brings it back. */
  readonly row?: Readonly<Record<string, unknown>>;
}

/** A row to set aside. What JSON does not hold (NaN, a date, something that holds itself) is kept as its text. */
export function asideRow(table: string, row: object, why: string, schema: number): AsideRow {
  const kept = plainValue(row) as Readonly<Record<string, unknown>>;
  return { id: digestOf(canonicalText([table, kept])), table, schema, why, row: kept };
}

/** The same, mended or deleted for good. */
export function settledAside({ row: _, ...rest }: AsideRow): AsideRow {
  return rest;
}

/** Sixteen hexadecimal digits of a text: two runs of FNV-1a (32 bits), the second from another beginning. */
function digestOf(text: string): string {
  return [0x811c9dc5, 0x9dc5811c]
    .map((begin) => {
      let sum = begin;
      for (let at = 0; at < text.length; at++) sum = Math.imul(sum ^ text.charCodeAt(at), 0x01000193);
      return (sum >>> 0).toString(16).padStart(8, "0");
    })
    .join("");
}
