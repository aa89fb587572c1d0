import { describe, expect, it } from "vitest";
import { addDays, compareDates, instantOf, isoWeek, practiceDay, weekday, weekStart } from "#domain";
import { readTime } from "#entry";
import published from "./iso8601-dates-durations.json" with { type: "json" };

const { weekDates, durationsMs, localDays } = published.expected;

describe("ISO 8601 week dates (Python isocalendar)", () => {
  it.each(weekDates)("$date is $week", ({ date, week: expected }) => {
    const { year, week } = isoWeek(date);
    expect(`${year}-W${String(week).padStart(2, "0")}-${weekday(date)}`).toBe(expected);
    expect(weekStart(date)).toBe(addDays(date, 1 - Number(expected.at(-1))));
  });
});

describe("days of 23, 24 and 25 hours (IANA data through Python zoneinfo)", () => {
  it.each(localDays)("$date in $zone has $hours hours", ({ zone, date, startUtcMs, endUtcMs, hours }) => {
    const next = addDays(date, 1);
    expect(instantOf(date, 0, zone)).toBe(startUtcMs);
    expect(instantOf(next, 0, zone)).toBe(endUtcMs);
    expect(endUtcMs - startUtcMs).toBe(hours * 3_600_000);
    expect(practiceDay(startUtcMs, zone, 0)).toBe(date);
    expect(practiceDay(startUtcMs - 1, zone, 0)).toBe(addDays(date, -1));
    expect(practiceDay(endUtcMs - 1, zone, 0)).toBe(date);
    expect(practiceDay(endUtcMs, zone, 0)).toBe(next);
    expect(compareDates(date, next)).toBeLessThan(0);
  });
});

describe("ISO 8601 durations: the same figures typed as a lap time", () => {
  const clock = durationsMs.filter(({ text, ms }) => text.startsWith("PT") && ms > 0);

  it.each(clock)("$text", ({ text, ms }) => {
    const [, hours, minutes = "", seconds = ""] = /^PT(?:(\d+)H)?(\d+)M([\d.,]+)S$/.exec(text) ?? [];
    const [whole = "", fraction = ""] = seconds.split(/[.,]/);
    const tail = `${whole.padStart(2, "0")}${seconds.includes(",") ? "," : "."}${fraction}`;
    const typed = hours === undefined ? `${minutes}:${tail}` : `${hours}:${minutes.padStart(2, "0")}:${tail}`;
    expect(readTime(typed)).toMatchObject({ ok: true, ms });
  });

  it("has three of them", () => expect(clock).toHaveLength(3));
});
