import type { Page, ReferenceLap, Target } from "#domain";

const stamps = { createdAt: 0, updatedAt: 0 };
const dayMs = 86_400_000;

/** Noon (UTC) of a day of March 2026. */
export const noon = (day: number) => Date.UTC(2026, 2, day, 12);

/** "2026-03-05" */
export const march = (day: number) => new Date(noon(day)).toISOString().slice(0, 10);

/** A best-lap target set at noon of a day of March 2026. */
export function aTarget(setOnDay: number, fields: Partial<Target> = {}): Target {
  const setAt = noon(setOnDay);
  return {
    ...stamps,
    id: `set ${setOnDay}`,
    comboId: "combo",
    kind: "best",
    value: 84_000,
    setAt,
    setOn: march(setOnDay),
    ...fields,
  };
}

export function aPage(fromDay: number, fields: Partial<Page> = {}): Page {
  return { ...stamps, id: `page ${fromDay}`, comboId: "combo", from: noon(fromDay), reason: "", ...fields };
}

export function aReference(knownOnDay: number, ms: number, fields: Partial<ReferenceLap> = {}): ReferenceLap {
  const at = noon(knownOnDay);
  return {
    id: `reference ${ms}`,
    createdAt: at,
    updatedAt: at,
    comboId: "combo",
    ms,
    decimals: 3,
    source: "a friend",
    ...fields,
  };
}

/** A session that begins in the evening of a day of March 2026. */
export const anEvening = (day: number) => ({ date: march(day), startedAt: noon(day) + dayMs / 3 });
