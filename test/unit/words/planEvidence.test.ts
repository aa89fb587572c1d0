import { describe, expect, it, test } from "vitest";
import { known } from "#domain";
import type { PlanFacts } from "#stats";
import { planEvidence, planRests, writtenLine } from "#words";
import { rules } from "../../../src/stats/plan/planRules.ts";
import { isOurAdvice } from "../../../src/words/planLine.ts";
import { aCorner, steadyFacts } from "../../support/planFacts.ts";
import { expectWellFormed } from "./wellFormed.ts";

const facts: PlanFacts = {
  ...steadyFacts,
  account: { pace: 304, repeatability: 430, mistakes: 277, others: -5, balance: 1006, laps: 73 },
  lost: { laps: 115, lost: 7 },
  corners: [
    aCorner(5, {
      worth: { low: 102, mid: 242, high: 473 },
      ...{ unused: 90, mistakes: 5, laps: 193, mistakesMs: 152 },
      braking: { what: "late", count: 2, of: 3 },
      throttle: { what: "twice", count: 2, of: 2 },
    }),
  ],
  sector: { sector: 2, ms: 547, usual: 32_023 },
  spread: known({ laps: 60, runs: 30, evenings: 10, sessions: 18 }),
  overnight: known({ estimate: 212, low: 104, high: 330, pairs: 12 }),
};
const reasonOf = (line: Parameters<typeof planRests>[0], of: PlanFacts = facts) =>
  planRests(line, of)[0]?.says;

describe("the reason of a line rests on the figures of its rule", () => {
  it("of the account all lines that cost, the largest first", () => {
    expect(reasonOf({ rule: "mistakes", corner: 5 })).toBe(
      "Over your last six evenings, in 73 laps, a lap costs: uneven laps 0.43 s, pace 0.30 s and mistakes 0.28 s. 7 of 115 laps were lost, those without a time among them. 5 of 193 laps had a mistake at corner 5.",
    );
    expect(reasonOf({ rule: "repeatability", sector: 2 })).toMatch(
      /Sector 2 holds most time: 0\.55 s a lap between its usual and its best\.$/,
    );
  });

  it("of a corner what it is worth, what went wrong there, what the reviews said", () => {
    expect(reasonOf({ rule: "corner", corner: 5 })).toBe(
      "Corner 5 is worth between 0.10 and 0.48 s a lap: road left unused 0.09 s (an estimate) and mistakes 0.15 s. 5 of 193 laps had a mistake at corner 5. Braking was late in 2 of 3 reviews. Throttle was pressed twice in 2 of 2 reviews.",
    );
    expect(reasonOf({ rule: "corner", corner: 8 })).toBe("");
  });

  it("of runs that differ the shares of the spread", () => {
    expect(reasonOf({ rule: "runs alike" })).toMatch(
      /Of the spread of pace laps come 60 % from lap to lap of a run, 30 % from run to run of an evening and 10 % from evening to evening, from 18 sessions\.$/,
    );
  });
});

test("a warm-up is measured on the driver only where evenings begin clearly slower", () => {
  const [own] = planRests({ rule: "warm-up" }, facts);
  expect(own).toMatchObject({ evidence: "measured on you" });
  expect(own?.says).toBe(
    "An evening begins between 0.10 and 0.33 s slower than the one before ended, from 12 pairs of evenings.",
  );
  const chance = { ...facts, overnight: known({ estimate: 20, low: -90, high: 130, pairs: 12 }) };
  expect(planRests({ rule: "warm-up" }, chance)[0]).toMatchObject({
    evidence: "fair evidence",
    title:
      "The reason and the advice: fair evidence, found in studies of practice, most of them of other skills.",
  });
});

test("advice that studies of practice bear out is fair evidence, what they do not settle worth a try, all else has no source", () => {
  const advice = Object.entries(planEvidence).map(([rule, rests]) => [rule, rests.advice]);
  const of = (evidence: string) => advice.flatMap(([rule, one]) => (one === evidence ? [rule] : []));
  // Warm-up decrement, practice is not learning, one weakness at a time, process goals, randomised trials on one person.
  expect(of("fair evidence")).toEqual(["warm-up", "rig test", "again", "corner", "target", "measure"]);
  expect(of("worth a try")).toEqual(["drill", "runs alike"]);
  expect(of("measured on you")).toEqual([]);
});

test("what is claimed for advice without a source says that no test is known, and no claim is a promise", () => {
  for (const rule of Object.keys(planEvidence)) {
    const rests = planRests({ rule, corner: 5, sector: 2 }, facts);
    expect(new Set(rests.map(({ title }) => title)).size).toBe(rests.length);
    const [reason, advice] = rests;
    expect(reason?.title).toMatch(/^The reason: (measured on you, timed|fair evidence, found) .*\.$/);
    expect(advice?.title).toMatch(/^The advice: .*\.$/);
    const isCommon = advice?.evidence === "common practice, no source";
    expect(advice?.says.includes("no test of what it brings is known")).toBe(isCommon);
    expect(advice?.says).not.toMatch(/\b(will|always|best|makes? you|science)\b/);
    for (const { title, says } of rests) for (const one of [title, says]) expectWellFormed(one);
  }
});

test("a class is said with what it means, but for the one that says it itself", () => {
  expect(planRests({ rule: "drill", corner: 5 }, facts).map(({ title }) => title)).toEqual([
    "The reason: measured on you, timed or counted in your own laps.",
    "The advice: worth a try, not settled by studies.",
  ]);
  expect(planRests({ rule: "pace" })[1]?.title).toBe("The advice: common practice, no source.");
});

test("a line that the driver wrote rests on nothing of ours, and without figures the class is still said", () => {
  expect(planRests({}, facts)).toEqual([]);
  expect(planRests({ rule: "a rule of later days" }, facts)).toEqual([]);
  expect(planRests({ rule: "pace" })[0]).toMatchObject({ evidence: "measured on you", says: "" });
});

test("on a circuit where no lap was driven nothing is measured on the driver", () => {
  const none = { ...steadyFacts, driven: { sessions: 0, laps: 0, before: 0 } };
  expect(planRests({ rule: "learn the layout" }, none).map(({ title }) => title)).toEqual([
    "The reason and the advice: common practice, no source.",
  ]);
  const some = { ...steadyFacts, driven: { sessions: 1, laps: 6, before: 0 } };
  expect(planRests({ rule: "learn the layout" }, some)[0]?.evidence).toBe("measured on you");
});

test("what the driver attends to instead is not told as advice of ours", () => {
  const of = (rule: string, attendTo: string) =>
    planRests({ rule, corner: 5, attendTo }, facts).map(({ evidence }) => evidence);
  expect(of("corner", "look through to corner 6")).toEqual(["measured on you"]);
  expect(of("corner", "brake earlier for corner 5")).toEqual(["measured on you", "fair evidence"]);
  expect(of("pace", "breathe out")).toEqual(["measured on you"]);
});

test("every advice of a draft is known as ours", () => {
  const drafts = [
    { ...facts, races: 1, daysSince: 20 },
    { ...facts, tried: [{ rule: "corner", corner: 5, drill: undefined, laps: 8, isGood: true }] },
    { ...facts, lost: { laps: 60, lost: 20 } },
    { ...facts, corners: [], lost: { laps: 60, lost: 20 } },
    { ...facts, tried: [{ rule: "drill", corner: 5, drill: "kerb", laps: 5, isGood: false }] },
    { ...steadyFacts, driven: { sessions: 0, laps: 0, before: 0 } },
  ] as const satisfies readonly PlanFacts[];
  const layout = [5, 6, 7].map((number) => ({ number, sector: 2 }));
  for (const { rule, lines } of rules)
    for (const draft of drafts)
      for (const line of lines(draft).map((one) => writtenLine(one, layout)))
        expect([rule, line.attendTo, isOurAdvice(rule, line)]).toEqual([rule, line.attendTo, true]);
});

test("a target is told with how far it is", () => {
  const target = { kind: "best", value: 83_300, by: "2026-12-13", days: 21 } as const;
  expect(reasonOf({ rule: "target" }, { ...facts, target, best: 83_900 })).toBe(
    "Your best lap is 1:23.900: 0.60 s to go in 21 days.",
  );
  expect(
    reasonOf({ rule: "target" }, { ...facts, target: { ...target, kind: "median" }, usual: 84_010 }),
  ).toBe("Your last usual lap is 1:24.01: 0.71 s to go in 21 days.");
  expect(reasonOf({ rule: "target" }, facts)).toBe("");
});
