import { describe, expect, it } from "vitest";
import type { Page } from "#domain";
import { sessionDigest } from "#stats";
import { sayBreak, sayBreaks } from "#words";
import { breaksOf } from "../../../../src/stats/period/breaksOf.ts";
import { aRun, aSession, choices } from "../someRows.ts";

const digest = (dayNumber: number, laps = 6) =>
  sessionDigest(
    aSession(dayNumber),
    [
      aRun(
        1,
        Array.from({ length: laps }, (_, lap) => 84_000 + lap),
        { sessionId: `${dayNumber}` },
      ),
    ],
    choices,
  );
/** Days of 2026, counted from 1 January: 12 February is day 42, 1 March day 59. */
const page = (dayNumber: number): Page => ({
  id: `page ${dayNumber}`,
  comboId: "combo",
  from: aSession(dayNumber).startedAt - 1,
  reason: "new tyre model",
  createdAt: 0,
  updatedAt: 0,
});

describe("breaks of a combo", () => {
  it("are not missed from 12 Feb to 1 Mar where a new page lies between", () => {
    const [found, ...more] = breaksOf([digest(40), digest(42), digest(59), digest(60)], [page(59)]);
    expect(more).toEqual([]);
    expect(found).toMatchObject({ from: "2026-02-12", to: "2026-03-01", days: 17, isCompared: false });
    expect(found && sayBreak(found)).toBe(
      "17 days without a session until Sun 1 Mar 2026; what it cost cannot be told: no usual lap before and after it that can be compared.",
    );
    expect(found && sayBreaks([found])).toBe("one break of 17 days");
  });

  it("are ended by any session on any page, however short", () => {
    expect(breaksOf([digest(42), digest(50, 1), digest(59)], [page(59)])).toEqual([]);
    expect(breaksOf([digest(42), digest(50, 0), digest(59)], [page(59)])).toHaveLength(1);
  });

  it("within a page have their cost, as before", () => {
    const [found] = breaksOf([digest(0), digest(1), digest(20), digest(21)], []);
    expect(found).toMatchObject({ days: 19, isCompared: true, lapsUntilBack: 6 });
  });

  it("have each the cost of its own, whatever order the sessions come in", () => {
    const days = [0, 1, 2, 3, 4, 24, 25, 44, 45];
    const found = breaksOf(days.map((day) => digest(day)).toReversed(), []);
    expect(found.map(({ from, to, days: long }) => [from, to, long])).toEqual([
      ["2026-01-05", "2026-01-25", 20],
      ["2026-01-26", "2026-02-14", 19],
    ]);
    expect(found.every(({ isCompared }) => isCompared)).toBe(true);
    const turned = breaksOf(
      days.map((day) => digest(day)),
      [page(44)],
    );
    expect(turned.map(({ isCompared }) => isCompared)).toEqual([true, false]);
    expect(turned[1]?.cost).toEqual({ known: false, reason: { because: "no usual lap on both sides" } });
  });

  it("begin at ten days", () => {
    expect(breaksOf([digest(0), digest(9)], [])).toEqual([]);
    expect(breaksOf([digest(0), digest(10)], [])).toHaveLength(1);
  });
});
