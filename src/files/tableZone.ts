import type { Reading } from "#domain";

/** Making a clock of a zone is dear, and a table names the same one in every row. */
const seen = new Map<string, boolean>();

/** Reads an IANA name of a time zone that this browser knows: Europe/Berlin. */
export function readZone(cell: string): Reading<{ zone: string }> {
  let isKnown = seen.get(cell);
  if (isKnown === undefined) {
    isKnown = isZone(cell);
    seen.set(cell, isKnown);
  }
  if (isKnown) return { ok: true, zone: cell };
  const wrong = "The time zone is not known here.";
  return { ok: false, problem: { at: 0, length: cell.length, wrong, right: "Write it as Europe/Berlin." } };
}

function isZone(name: string): boolean {
  if (!/^[A-Za-z][\w+\-/]{1,60}$/.test(name)) return false;
  try {
    return new Intl.DateTimeFormat("en", { timeZone: name }).resolvedOptions().timeZone !== "";
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}
