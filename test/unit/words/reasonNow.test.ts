import { expect, test } from "vitest";
import { draftPlan, type PlanFacts } from "#stats";
import { withReasonNow, writtenLine } from "#words";
import { steadyFacts } from "../../support/planFacts.ts";

const target = { kind: "best", value: 83_000, by: "2026-12-01", days: 5 } as const;
const shown = (then: Partial<PlanFacts>, now: Partial<PlanFacts> | undefined, rule: string) => {
  const line = draftPlan({ ...steadyFacts, ...then }).lines.find((one) => one.rule === rule);
  if (line === undefined) throw new Error(rule);
  return withReasonNow(writtenLine(line), now && { ...steadyFacts, ...now }).reason;
};

test("that nobody drove here before is not said once laps were driven", () => {
  const none = { driven: { sessions: 0, laps: 0, before: 0 } };
  expect(shown(none, none, "learn the layout")).toBe("You have not driven here before.");
  expect(shown(none, { driven: { sessions: 1, laps: 6, before: 0 } }, "learn the layout")).toBeUndefined();
  expect(shown(none, {}, "learn the layout")).toBeUndefined();
  expect(shown(none, undefined, "learn the layout")).toBeUndefined();
});

test("days left and days since are said on the day they are right", () => {
  expect(shown({ target }, { target }, "target")).toMatch(/5 days left\.$/);
  expect(shown({ target }, { target: { ...target, days: 4 } }, "target")).toBeUndefined();
  expect(shown({ daysSince: 12 }, { daysSince: 13 }, "after a break")).toBeUndefined();
});

test("what is true of any day stays", () => {
  expect(shown({}, undefined, "warm-up")).toMatch(/^The first laps after a rest/);
});
