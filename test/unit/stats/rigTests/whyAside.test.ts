import { expect, test } from "vitest";
import { whyAside } from "#stats";
import { choices } from "../someRows.ts";
import { aRigTest, aTestRun, cleanLaps } from "./aRigTest.ts";

test("a run of a rig test counts, or does not for the first reason there is", () => {
  const why = (told: string, laps: number, kind: "pace" | "race" = "pace") =>
    whyAside(aTestRun(1, 1, told, cleanLaps(laps), { kind }), aRigTest("AB"), choices);
  expect(why("1A", 5)).toBeUndefined();
  expect(why("1A", 4)).toEqual({
    because: "figure",
    reason: { needs: 5, of: "clean lap", has: 4 },
  });
  expect(why("1A", 5, "race")).toEqual({
    because: "figure",
    reason: { because: "not compared", run: "race" },
  });
  expect(why("1A mistakes", 4, "race")).toEqual({ because: "void", words: "mistakes" });
});
