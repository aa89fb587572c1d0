import { expect, it } from "vitest";
import { sessionDigest } from "#stats";
import { onSurface } from "../../../../src/stats/verdict/onSurface.ts";
import { aRun, aSession, choices } from "../someRows.ts";

const wet = [95_400, 95_000, 95_200, 95_100, 95_300];
const digest = sessionDigest(
  aSession(0),
  [aRun(1, [84_000, 84_100, 84_200, 84_300, 84_400]), aRun(2, wet, { surface: "wet" })],
  choices,
);

it("leaves a session as it is for a dry track", () => {
  expect(onSurface(digest, "dry")).toBe(digest);
});

it("has the usual lap and the best of the laps on a wet one, and neither where none was driven", () => {
  expect(onSurface(digest, "wet").pace).toMatchObject({ best: 95_000, medianForTrend: 95_200 });
  expect(onSurface(digest, "damp").pace).toMatchObject({ best: undefined, medianForTrend: undefined });
});
