import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import { sayNeither, sayRigStep } from "#words";

const step = (estimate: number, low: number, high: number, isQuestioned = false) =>
  sayRigStep(known({ estimate, low, high, isQuestioned }));

test("a step clear of zero is a difference, one that holds zero cannot be told from practice", () => {
  expect(step(-310, -500, -125)).toBe("Faster by 0.31 s, very likely at least 0.12 s");
  expect(step(20, -96, 140)).toBe("Cannot be told from practice: between 0.10 s faster and 0.14 s slower");
  expect(step(0, 0, 0)).toBe("No difference");
  expect(
    sayRigStep(
      unknown({
        needs: 2,
        of: "session",
        each: { needs: 5, of: "pace lap" },
        has: 1,
        where: "before the change",
      }),
    ),
  ).toBe("Not enough sessions with 5 pace laps each yet: 1 of 2 before the change");
});

test("a step too large for a rig is asked about", () => {
  expect(step(-9000, -9500, -8500, true)).toMatch(/are two combos mixed up\?$/);
});

test("sessions on neither side are named with the reason", () => {
  const both = (date: string) => ({ sessionId: date, date, why: "both" }) as const;
  expect(sayNeither([])).toEqual([]);
  expect(sayNeither([both("2026-10-24")])).toEqual([
    "Sat 24 Oct 2026 was driven with both settings and counts on neither side.",
  ]);
  expect(
    sayNeither([
      both("2026-10-24"),
      { sessionId: "c", date: "2026-10-27", why: "old again" },
      both("2026-10-25"),
    ]),
  ).toEqual([
    "Sat 24 Oct 2026 and Sun 25 Oct 2026 were driven with both settings and count on neither side.",
    "Tue 27 Oct 2026 was driven with the old settings again and counts on neither side.",
  ]);
});
