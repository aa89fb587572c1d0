import { expect, test } from "vitest";
import { hintOf } from "../../../../../src/screens/rig/test/hintOf.ts";

test("a number that cannot be read says so in place of its hint, unless the form has said it", () => {
  const problem = { wrong: "3 is out of range.", right: "At least 5." };
  expect(hintOf({}, "Five are enough.", undefined)).toBe("Five are enough.");
  expect(hintOf({ problem }, "Five are enough.", undefined)).toBe("3 is out of range. At least 5.");
  expect(hintOf({ problem }, "Five are enough.", problem)).toBe("Five are enough.");
});
