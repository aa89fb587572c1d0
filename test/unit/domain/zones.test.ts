import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addDays,
  daysBetween,
  instantOf,
  isKnownZone,
  practiceDay,
  sayMoment,
  timeOfDay,
  zoneForm,
} from "#domain";

const hour = 3_600_000;
const zones = [
  "Europe/Berlin",
  "America/New_York",
  "Asia/Kathmandu",
  "Asia/Tokyo",
  "Pacific/Kiritimati",
  "Australia/Lord_Howe",
  "America/Havana",
  "UTC",
];

describe("the practice day", () => {
  it("goes on past midnight until the hour the driver chose", () => {
    const at = (text: string) => Date.parse(text);
    expect(practiceDay(at("2026-10-14T23:30:00+02:00"), "Europe/Berlin", 4)).toBe("2026-10-14");
    expect(practiceDay(at("2026-10-15T03:59:59+02:00"), "Europe/Berlin", 4)).toBe("2026-10-14");
    expect(practiceDay(at("2026-10-15T04:00:00+02:00"), "Europe/Berlin", 4)).toBe("2026-10-15");
    expect(practiceDay(at("2026-10-15T00:00:00+02:00"), "Europe/Berlin", 0)).toBe("2026-10-15");
  });

  it("holds in the nights when the clocks change", () => {
    const march = instantOf("2026-03-29", 1, "Europe/Berlin") + hour / 2;
    expect(practiceDay(march, "Europe/Berlin", 4)).toBe("2026-03-28");
    expect(timeOfDay(march + hour, "Europe/Berlin")).toBe("03:30");
    const october = instantOf("2026-10-25", 1, "Europe/Berlin") + hour / 2;
    expect(timeOfDay(october + 3 * hour, "Europe/Berlin")).toBe("03:30");
    expect(practiceDay(october + 3 * hour, "Europe/Berlin", 4)).toBe("2026-10-24");
  });

  it("is the day of the zone, not of this machine", () => {
    const instant = Date.UTC(2026, 2, 1, 11);
    expect(practiceDay(instant, "Pacific/Kiritimati", 0)).toBe("2026-03-02");
    expect(practiceDay(instant, "America/New_York", 0)).toBe("2026-03-01");
  });

  it("never runs back and never skips a day", () => {
    const start = fc.integer({ min: Date.UTC(2015, 0), max: Date.UTC(2030, 0) });
    fc.assert(
      fc.property(
        start,
        fc.constantFrom(...zones),
        fc.integer({ min: 0, max: 12 }),
        (instant, zone, dayStartsAt) => {
          const later = practiceDay(instant + hour, zone, dayStartsAt);
          expect([0, 1]).toContain(daysBetween(practiceDay(instant, zone, dayStartsAt), later));
        },
      ),
      { seed: 5, numRuns: 500 },
    );
  });

  it("is UTC's where the zone is not known here, and that can be told", () => {
    const late = Date.UTC(2026, 9, 14, 23, 5);
    expect(isKnownZone("Nowhere/Atall")).toBe(false);
    expect(isKnownZone("Europe/Berlin")).toBe(true);
    expect(practiceDay(late, "Nowhere/Atall", 4)).toBe("2026-10-14");
    expect(timeOfDay(late, "Nowhere/Atall")).toBe("23:05");
    expect(instantOf("2026-10-14", 12, "Nowhere/Atall")).toBe(Date.UTC(2026, 9, 14, 12));
  });

  it("is some day for whatever text stands for the zone", () => {
    const text = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.string(),
      fc.constantFrom("__proto__", "UTC+25", "+25:99"),
    );
    fc.assert(
      fc.property(text, fc.integer({ min: 0, max: Date.UTC(2199, 0) }), (zone, instant) => {
        expect(practiceDay(instant, zone, 4)).toMatch(/^\d{4}-\d\d-\d\d$/);
        expect(timeOfDay(instant, zone)).toMatch(/^\d\d:\d\d$/);
        expect(Number.isFinite(instantOf("2026-10-14", 12, zone))).toBe(true);
      }),
      { seed: 5, numRuns: 2000 },
    );
  });
});

describe("an instant in words", () => {
  it("is told by the clock on the wall", () => {
    expect(sayMoment(Date.UTC(2026, 9, 14, 21, 5), "Europe/Berlin")).toBe("Wednesday 14 October, 23:05");
  });

  it("of midnight is 00:00", () => expect(timeOfDay(Date.UTC(2026, 9, 14), "UTC")).toBe("00:00"));
});

describe("what may stand for a zone", () => {
  it.each(["Europe/Berlin", "UTC", "Etc/GMT+12", "America/Port-au-Prince", "+05:45", "-0330"])(
    "is %s",
    (zone) => expect(zone).toMatch(zoneForm),
  );
  it.each(["", "5", "+5", "+05:4", "+aa:bb", " UTC", "UTC ", "/UTC", "Europe Berlin", `Z${"x".repeat(64)}`])(
    "is not %j",
    (zone) => expect(zone).not.toMatch(zoneForm),
  );
});

describe("the instant of an hour", () => {
  it("takes the first of an hour that comes twice, and steps over one that is skipped", () => {
    expect(instantOf("2026-10-25", 2, "Europe/Berlin")).toBe(Date.parse("2026-10-25T02:00:00+02:00"));
    expect(instantOf("2026-03-29", 2, "Europe/Berlin")).toBe(Date.parse("2026-03-29T03:00:00+02:00"));
    expect(() => instantOf("2026-02-30x", 2, "Europe/Berlin")).toThrow(/not a calendar date: 2026-02-30x/);
  });

  it("is noon on the clock of the zone, and noon is on its own day", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), fc.constantFrom(...zones), (days, zone) => {
        const date = addDays("1985-01-01", days);
        const noon = instantOf(date, 12, zone);
        expect(timeOfDay(noon, zone)).toBe("12:00");
        expect(practiceDay(noon, zone, 4)).toBe(date);
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});
