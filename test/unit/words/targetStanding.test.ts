import { expect, test } from "vitest";
import type { Standing } from "#combo";
import { type Target, unknown } from "#domain";
import type { TargetFigure } from "#stats";
import { sayStanding } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const say = (standing: Standing, target: Partial<Target> = {}, closest?: TargetFigure) => {
  const whole: Target = {
    ...{ id: "t", createdAt: 0, updatedAt: 0, comboId: "c", setAt: 0, setOn: "2026-03-01" },
    ...{ kind: "best", value: 83_000, by: "2026-03-31" },
    ...target,
  };
  const progress = unknown({ because: "no figure yet" });
  const said = sayStanding({ target: whole, standing, now: undefined, closest, progress });
  expectWellFormed(said);
  return said;
};
const lost: Standing = { kind: "open", daysLeft: 3, lostOn: "2026-03-10" };
const missed = { kind: "missed", lostOn: undefined, reachedOn: undefined } as const;

test("a level is very likely lost, the figure of a session just lost", () => {
  expect(say(lost, { kind: "median" })).toBe(
    "Reached before, and very likely lost again since Tue 10 Mar 2026. 3 days left.",
  );
  expect(say(lost, { kind: "scatter", value: 300 })).toBe(
    "Reached before, and lost again on Tue 10 Mar 2026. 3 days left.",
  );
});

test("what was missed says how near it came, later on, or that it was lost again", () => {
  expect(say(missed)).toBe("Missed.");
  expect(say({ ...missed, lostOn: "2026-03-20" }, { kind: "cleanShare", value: 900 })).toBe(
    "Missed: reached before its date, and lost again on Fri 20 Mar 2026.",
  );
  expect(say({ ...missed, reachedOn: "2026-04-02" })).toBe("Missed by its date; reached on Thu 2 Apr 2026.");
  expect(say(missed, { kind: "cleanShare", value: 900 }, { value: 812, decimals: 3 })).toBe(
    "Missed. Your best share of clean laps in that time: 81.2 %.",
  );
  expect(say(missed, { kind: "meanOf", laps: 5 }, { value: 84_012, decimals: 3 })).toBe(
    "Missed. Your best mean of 5 laps in that time: 1:24.012.",
  );
});
