import { expect, test } from "vitest";
import type { Plan } from "#domain";
import { readName } from "../../../../../src/screens/targets/plan/typedName.ts";

const kept: Plan = { id: "a", createdAt: 0, updatedAt: 0, name: "Usual evening", lines: [] };
const read = (templateId: string | null, name: string) => {
  const reading = readName({ templateId, name }, [kept]);
  return reading.ok ? { name: reading.value } : reading.problems.name;
};

test("a name is taken without the blanks around it", () => {
  expect(read(null, " Short evening ")).toEqual({ name: "Short evening" });
});

test("no name, too long a one, and one that another template has are refused", () => {
  expect(read(null, "  ")).toMatchObject({ wrong: "Nothing stands there." });
  expect(read(null, "x".repeat(401))).toMatchObject({ wrong: "401 signs are too many." });
  expect(read(null, "usual Evening")).toMatchObject({
    wrong: "There is a template “Usual evening” already.",
  });
});

test("a template may keep its own name, in other letters too", () => {
  expect(read("a", "usual evening")).toEqual({ name: "usual evening" });
});
