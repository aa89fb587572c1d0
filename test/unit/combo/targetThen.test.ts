import { expect, test } from "vitest";
import { accountTarget, presentPage, targetOnDay, targetThen } from "#combo";
import type { Target } from "#domain";

const on = (day: number) => Date.UTC(2026, 2, day, 18);
const target: Target = {
  ...{ id: "t", createdAt: 0, updatedAt: 0, comboId: "c", setAt: on(1), setOn: "2026-03-01" },
  ...{ kind: "meanOf", laps: 5, value: 82_000 },
  earlier: [
    { kind: "best", value: 83_000, by: "2026-03-31", until: on(10), untilDay: "2026-03-10" },
    { kind: "median", value: 82_500, until: on(20), untilDay: "2026-03-20" },
  ],
};

test("a target is what it was until it was changed", () => {
  expect(targetThen(target, on(5))).toMatchObject({ kind: "best", value: 83_000, by: "2026-03-31" });
  expect(targetThen(target, on(5))).not.toHaveProperty("laps");
  expect(targetThen(target, on(15))).toMatchObject({ kind: "median", value: 82_500 });
  expect(targetThen(target, on(15))).not.toHaveProperty("by");
  expect(targetThen(target, on(25))).toBe(target);
});

test("a session is measured against what was wanted then, whatever is wanted now", () => {
  const measured = (day: number, date: string) =>
    accountTarget({
      session: { date, startedAt: on(day) },
      page: presentPage([], "2026-03-31"),
      targets: [target],
      references: [],
      pbBefore: 90_000,
    });
  expect(measured(5, "2026-03-05")).toEqual({ ms: 83_000, from: "target", kind: "best" });
  expect(measured(15, "2026-03-15")).toEqual({ ms: 82_500, from: "target", kind: "median" });
  expect(measured(25, "2026-03-25")).toEqual({ ms: 90_000, from: "pb" });
});

test("on the day of a change it is what it was changed to", () => {
  expect(targetOnDay(target, "2026-03-09")).toMatchObject({ kind: "best", value: 83_000 });
  expect(targetOnDay(target, "2026-03-10")).toMatchObject({ kind: "median", value: 82_500 });
  expect(targetOnDay(target, "2026-03-20")).toBe(target);
});

test("the figure at its setting goes with the figure it is of", () => {
  const mean = { kind: "meanOf", laps: 5, value: 82_500, until: on(10), untilDay: "2026-03-10" } as const;
  const started = { ...target, start: 84_000, earlier: [mean] };
  expect(targetOnDay(started, "2026-03-05")).toMatchObject({ value: 82_500, start: 84_000 });
  expect(targetOnDay({ ...started, earlier: [{ ...mean, laps: 3 }] }, "2026-03-05")).not.toHaveProperty(
    "start",
  );
  expect(targetThen({ ...started, earlier: target.earlier ?? [] }, on(5))).not.toHaveProperty("start");
});
