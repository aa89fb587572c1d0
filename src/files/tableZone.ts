import { isKnownZone, type Reading } from "#domain";

/** Reads a time zone that this browser knows: Europe/Berlin. */
export function readZone(cell: string): Reading<{ zone: string }> {
  if (/^[\w+\-/:]{2,64}$/.test(cell) && isKnownZone(cell)) return { ok: true, zone: cell };
  const wrong = "The time zone is not known here.";
  return { ok: false, problem: { at: 0, length: cell.length, wrong, right: "Write it as Europe/Berlin." } };
}
