/** Between instants and calendar dates of a named time zone (IANA, by way of `Intl`). */
import { addDays } from "./calendar.ts";
import type { CalendarDate } from "./rows.ts";

interface Clock {
  readonly format: Intl.DateTimeFormat;
  /** False where this browser does not know the zone: then it is the clock of UTC. */
  readonly isKnown: boolean;
}

/**
 * The shape of an IANA name of a time zone, or of a fixed distance from UTC, which some devices have for a zone. Whether this
 * browser knows it is no matter: one that it does not know is told in UTC.
 */
export const zoneForm = /^([A-Za-z][\w+\-/]{1,63}|[+-]\d\d:?\d\d)$/;

const clocks = new Map<string, Clock>();

function clockOf(zone: string): Clock {
  let clock = clocks.get(zone);
  if (clock === undefined) {
    clock = madeClock(zone);
    clocks.set(zone, clock);
  }
  return clock;
}

function madeClock(zone: string): Clock {
  try {
    return { format: formatOf(zone), isKnown: true };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { format: formatOf("UTC"), isKnown: false };
  }
}

function formatOf(timeZone: string): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat("en-u-ca-iso8601", {
    timeZone,
    hourCycle: "h23",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    second: "2-digit",
  });
}

/**
 * Whether this browser knows the zone. Zones are made anew now and then, so an older browser may not know one that is
 * right; every time of it is then told in UTC, and whoever shows one says so.
 */
export function isKnownZone(zone: string): boolean {
  return clockOf(zone).isKnown;
}

interface WallClock {
  readonly date: CalendarDate;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
}

function wallClock(epochMs: number, zone: string): WallClock {
  const parts: Partial<Record<Intl.DateTimeFormatPartTypes, string>> = {};
  for (const { type, value } of clockOf(zone).format.formatToParts(epochMs)) parts[type] = value;
  return {
    date: `${(parts.year ?? "").padStart(4, "0")}-${parts.month}-${parts.day}`,
    hour: Number(parts.hour),
    minute: Number(parts.minute),
    second: Number(parts.second),
  };
}

/**
 * The day a driver would say it is: the local date, where a day begins at `dayStartsAt` o'clock, because people
 * practise past midnight. Reads the wall clock, so days of 23 and 25 hours need no care.
 * @param zone IANA name, "Europe/Berlin"; one that is not known here counts as UTC
 * @param dayStartsAt hour 0 to 23
 */
export function practiceDay(epochMs: number, zone: string, dayStartsAt: number): CalendarDate {
  const wall = wallClock(epochMs, zone);
  return wall.hour < dayStartsAt ? addDays(wall.date, -1) : wall.date;
}

/** What the clock on the wall shows: "23:05"; the clock of UTC where the zone is not known here. */
export function timeOfDay(epochMs: number, zone: string): string {
  const { hour, minute } = wallClock(epochMs, zone);
  return `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
}

/**
 * The instant at which the clock of a zone shows the full hour on a date. An hour that comes twice is the first of
 * the two; an hour that is skipped gives the instant as long after the change as it stands after the skipped time.
 */
export function instantOf(date: CalendarDate, hour: number, zone: string): number {
  const asUtc = Date.parse(`${date}T00:00:00Z`) + hour * 3_600_000;
  if (!Number.isFinite(asUtc)) throw new RangeError(`not a calendar date: ${date}`);
  const offsetAt = (instant: number) => {
    const wall = wallClock(instant, zone);
    const shown =
      Date.parse(`${wall.date}T00:00:00Z`) + ((wall.hour * 60 + wall.minute) * 60 + wall.second) * 1000;
    return shown - Math.floor(instant / 1000) * 1000;
  };
  const before = asUtc - offsetAt(asUtc - 86_400_000);
  const after = asUtc - offsetAt(asUtc + 86_400_000);
  const fits = [before, after].filter((instant) => instant + offsetAt(instant) === asUtc);
  return fits.length > 0 ? Math.min(...fits) : before;
}
