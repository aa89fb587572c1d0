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
    "wed  14  oct.,  2026",
    "2026-10-14\t",
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

  it.each([
    ["", "No date is typed.", "Write it as 2026-10-14 or 14 Oct 2026.", 0, 0],
    [
      "  3/4/2026 ",
      "“3/4/2026” is not a date this field reads.",
      "Write it as 2026-10-14 or 14 Oct 2026.",
      2,
      8,
    ],
    ["2026-02-30", "There is no such day as 2026-02-30.", "", 0, 10],
    ["Mon 14 Oct 2026", "Mon 14 Oct 2026 does not fit together.", "That date is Wed 14 Oct 2026.", 0, 15],
    ["1969-12-31", "The year 1969 cannot be right.", "Write a year from 1970 to 2199.", 0, 10],
    ["1 Jan 2200", "The year 2200 cannot be right.", "Write a year from 1970 to 2199.", 0, 10],
    ["the 2026-10-14", "“the 2026-10-14” is not a date this field reads.", "", 0, 14],
    ["2026-10-14th", "“2026-10-14th” is not a date this field reads.", "", 0, 12],
    ["+14 Oct 2026", "“+14 Oct 2026” is not a date this field reads.", "", 0, 12],
    ["14 Oct 20261", "“14 Oct 20261” is not a date this field reads.", "", 0, 12],
  ])("says of %j what is wrong, and where", (text, wrong, right, at, length) => {
    const reading = readDate(text);
    if (reading.ok) throw new Error("it was read");
    expect(reading.problem).toMatchObject({ wrong, at, length });
    expect(reading.problem.right).toContain(right);
  });

  it("takes the first and the last day a row may name", () => {
    expect(readDate("1970-01-01").ok).toBe(true);
    expect(readDate("31 Dec 2199").ok).toBe(true);
  });

  it("quotes no more than forty signs of a long text", () => {
    const wrongOf = (text: string) => {
      const reading = readDate(text);
      return reading.ok ? "" : reading.problem.wrong;
    };
    expect(wrongOf("x".repeat(40))).toContain(`“${"x".repeat(40)}”`);
    expect(wrongOf("x".repeat(41))).toContain(`“${"x".repeat(40)}…”`);
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
