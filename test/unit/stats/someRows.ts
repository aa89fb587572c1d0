import type { Lap, Page, Remark, RemarkKind, Run, Session } from "#domain";
import type { Choices } from "#stats";

const stamps = { createdAt: 0, updatedAt: 0 };
const day = 86_400_000;

/** The driver's choices as they are at first. */
export const choices: Choices = { settlingLaps: 0, displayDecimals: 3, marginPercent: 0.5 };

/** A lap as typed in these tests: a time, or a time with remarks, or remarks alone for a lap without a time. */
export type Told = number | readonly [ms: number | undefined, ...kinds: RemarkKind[]] | Partial<Lap>;

/** A page turned at an instant. */
export function aPage(from: number, fields: Partial<Page> = {}): Page {
  return { ...stamps, id: `page ${from}`, comboId: "combo", from, reason: "", ...fields };
}

/** A pace run on a dry track at full effort with the laps told, and the fields given. */
export function aRun(n: number, laps: readonly Told[], fields: Partial<Run> = {}): Run {
  const id = fields.id ?? `run ${fields.sessionId ?? "s"} ${n}`;
  return {
    ...stamps,
    id,
    sessionId: "s",
    comboId: "combo",
    n,
    startedAt: 0,
    kind: "pace",
    effort: "full",
    surface: "dry",
    note: "",
    laps: laps.map((told, index) => lapOf(told, index + 1, `${id} lap ${index + 1}`)),
    ...fields,
  };
}

function lapOf(told: Told, n: number, id: string): Lap {
  const base = { ...stamps, id, n, decimals: 3, source: "typed", remarks: [] as Remark[] } as const;
  if (typeof told === "number") return { ...base, ms: told };
  if (!isMarked(told)) return { ...base, ...told };
  const [ms, ...kinds] = told;
  return { ...base, remarks: kinds.map((kind) => ({ kind })), ...(ms !== undefined && { ms }) };
}

function isMarked(told: Told): told is readonly [number | undefined, ...RemarkKind[]] {
  return Array.isArray(told);
}

/** The session of a day, counted from 1 January 2026, at 20:00 UTC. */
export function aSession(dayNumber: number, fields: Partial<Session> = {}): Session {
  const startedAt = Date.UTC(2026, 0, 1, 20) + dayNumber * day;
  return {
    ...stamps,
    id: `session ${dayNumber}`,
    comboId: "combo",
    startedAt,
    isTimeOfDayKnown: true,
    date: new Date(startedAt).toISOString().slice(0, 10),
    zone: "UTC",
    focus: "free",
    note: "",
    ...fields,
  };
}
