import { expect, test } from "vitest";
import { lineToCome, type PlannedRun } from "#domain";

const line = (id: string, fields: Partial<PlannedRun> = {}): PlannedRun => ({ id, purpose: id, ...fields });

test("a plan is driven line by line; what was left out is passed over, and a run that is gone frees its line", () => {
  const plan = [line("a"), line("b", { skipped: true }), line("c")];
  expect(lineToCome(plan, [])?.id).toBe("a");
  expect(lineToCome(plan, [{ line: "a" }, {}])?.id).toBe("c");
  expect(lineToCome(plan, [{ line: "a", deletedAt: 5 }])?.id).toBe("a");
  expect(lineToCome(plan, [{ line: "a", guest: "" }])?.id).toBe("a");
  expect(lineToCome(plan, [{ line: "c" }, { line: "a" }])).toBeUndefined();
});

test("without a plan, and where its lines have no id, nothing comes", () => {
  expect(lineToCome(undefined, [])).toBeUndefined();
  expect(lineToCome([{ purpose: "warm up" }], [])).toBeUndefined();
});
