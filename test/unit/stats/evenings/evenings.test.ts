import { expect, test } from "vitest";
import { sessionDigest } from "#stats";
import { eveningSpread, eveningsInARow } from "../../../../src/stats/evenings/evenings.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

const evening = (day: number, ...runs: readonly (readonly Told[])[]) => {
  const session = aSession(day);
  return sessionDigest(
    session,
    runs.map((laps, index) => aRun(index + 1, laps, { sessionId: session.id })),
    choices,
  );
};

test("each evening stands with the next one, its pace laps as driven, sessions of one day being one evening", () => {
  const late = { ...evening(1, [92, 93]), sessionId: "late", startedAt: evening(1, [1]).startedAt + 1 };
  const page = [evening(0, [90, 91]), evening(1, [94], [[95, "spin"], 96]), late, evening(2, [97])];
  expect(eveningsInARow(page)).toEqual([
    [
      [90, 91],
      [94, 96, 92, 93],
    ],
    [[94, 96, 92, 93], [97]],
  ]);
});

test("over ten days there is no night to tell of, over nine there is; an evening without pace laps is none", () => {
  const page = [evening(0, [90]), evening(9, [91]), evening(12, [[99, "off"]]), evening(19, [92])];
  expect(eveningsInARow(page)).toEqual([[[90], [91]]]);
});

test("what the level moved by is taken off the laps of each session, and one the level does not hold is left out", () => {
  const page = [evening(0, [90_500, 90_300]), evening(2, [90_000]), evening(4, [89_900], [89_700])];
  const line = [
    { sessionId: "session 0", mid: 90_400 },
    { sessionId: "session 4", mid: 89_800 },
  ];
  expect(eveningSpread(page, line)).toEqual([[[89_900, 89_700]], [[89_900], [89_700]]]);
});
