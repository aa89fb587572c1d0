import { expect, it } from "vitest";
import { workOnLine } from "../../../src/words/workOnLine.ts";

const workOn = { line: "pace", ms: 490, sector: undefined, isOddAside: false } as const;
const reasonBy = (target: Parameters<typeof workOnLine>[0]["target"], over: string) =>
  workOnLine({ workOn, target }, 8, over)?.reason;

it("names what the laps are measured against: a target, a reference lap, a PB, or each session's own", () => {
  expect(reasonBy({ ms: 83_300, from: "target" }, "in this session")).toBe(
    "Pace costs most in this session: your best laps are 0.49 s a lap slower than the target.",
  );
  expect(reasonBy({ ms: 82_940, from: "reference" }, "in this session")).toMatch(
    /slower than the reference lap\.$/,
  );
  expect(reasonBy({ ms: 83_744, from: "pb" }, "in this session")).toMatch(
    /slower than the PB before the session\.$/,
  );
  expect(reasonBy(undefined, "this week")).toBe(
    "Pace costs most this week: your best laps are 0.49 s a lap slower than what each session is measured against.",
  );
});
