import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, readDate, sayDate, sayDay } from "#domain";

describe("dates in words", () => {
  it("is said in short and in full", () => {
    expect(sayDate("2026-10-14")).toBe("Wed 14 Oct 2026");
    expect(sayDay("2026-10-14")).toBe("Wednesday 14 October");
    expect(sayDate("2024-02-29")).toBe("Thu 29 Feb 2024");
  });
});

describe("typed dates", () => {
  it.each([
    "2026-10-14",
    " 2026-10-14 ",
    "14 Oct 2026",
    "14 october 2026",
    "Wed 14 Oct 2026",
    "Wednesday, 14 October 2026",
  ])("reads %j", (text) => expect(readDate(text)).toEqual({ ok: true, date: "2026-10-14" }));

  it.each([
    "",
    "3/4/2026",
    "14.10.2026",
    "14 Foo 2026",
    "2026-02-30",
    "31 Jun 2026",
    "Mon 14 Oct 2026",
    "20261014",
  ])("refuses %j and says what would be right", (text) => {
    const reading = readDate(text);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.problem.right).toMatch(/2026|Months/);
  });

  it("reads back what it says", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 84_000 }), (days) => {
        const date = addDays("1970-01-01", days);
        expect(readDate(sayDate(date))).toEqual({ ok: true, date });
      }),
      { seed: 7 },
    );
  });

  it("throws on no text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(typeof readDate(text).ok).toBe("boolean");
      }),
      { seed: 8 },
    );
  });
});
