import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import { sayNeither, sayRigStep } from "#words";

/** A step of a combo whose usual lap is 84 s. */
const step = (estimate: number, low: number, high: number, isQuestioned = false) =>
  sayRigStep({
    step: known({ estimate, low, high, isQuestioned }),
    after: { sessions: [], usual: { ms: 84_000, decimals: 3 } },
  });

test("a step clear of zero is a difference", () => {
  expect(step(-310, -500, -125)).toBe("Faster by 0.31 s, very likely at least 0.12 s");
  expect(step(0, 0, 0)).toBe("No difference");
  expect(
    sayRigStep({
      step: unknown({
        needs: 2,
        of: "session",
        each: { needs: 5, of: "pace lap" },
        has: 1,
        where: "before the change",
      }),
    }),
  ).toBe("Not enough sessions with 5 pace laps each yet: 1 of 2 before the change");
});

test("a step that leaves out all that is worth talking about is no difference to be noticed", () => {
  // A tenth of a percent of 84 s is 0.084 s (Hopkins 2000, of our methods §5).
  expect(step(10, -84, 84)).toBe("No difference you would notice: between 0.09 s faster and 0.09 s slower");
  expect(step(60, -5, 84)).toBe("No difference you would notice: between 0.01 s faster and 0.09 s slower");
  expect(step(10, -70, 85)).toMatch(/^No difference to be seen: /);
  // Without a usual lap nothing is known of what would be noticed.
  expect(sayRigStep({ step: known({ estimate: 1, low: -2, high: 3, isQuestioned: false }) })).toMatch(
    /^No difference to be seen: /,
  );
});

test("with zero in its middle half no difference is clear, with zero near an end there may be one", () => {
  expect(step(20, -96, 140)).toBe("No difference to be seen: between 0.10 s faster and 0.14 s slower");
  expect(step(-317, -750, 82)).toBe("Cannot be told from practice: between 0.75 s faster and 0.09 s slower");
  expect(step(317, -82, 750)).toMatch(/^Cannot be told from practice: /);
  expect(step(-200, -600, 200)).toMatch(/^No difference to be seen: /);
  expect(step(-210, -610, 190)).toMatch(/^Cannot be told from practice: /);
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
