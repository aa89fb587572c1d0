import { expect, test } from "vitest";
import { tableNames } from "#domain";
import { linksOf, rowsNamed } from "../../../../src/db/checks/rowsNamed.ts";
import { idAt, wholeRows, withAt } from "../../../support/wholeRows.ts";

test("a row names others each by its field, in the driver's words, and says what it can be without", () => {
  const named = (table: keyof typeof wholeRows) =>
    rowsNamed(table, wholeRows[table]).map(
      ({ field, to, word, isLoose, id }) =>
        `${field}: ${isLoose ? "perhaps " : ""}${word} in ${to} ${Number(id.slice(-12))}`,
    );
  expect(Object.fromEntries(tableNames.map((table) => [table, named(table)]))).toEqual({
    preferences: [],
    cars: [],
    tracks: [],
    layouts: ["trackId: track in tracks 3"],
    combos: ["carId: car in cars 2", "layoutId: layout in layouts 4"],
    pages: ["comboId: combo in combos 5"],
    references: ["comboId: combo in combos 5"],
    sessions: ["comboId: combo in combos 5"],
    runs: [
      "sessionId: session in sessions 8",
      "comboId: combo in combos 5",
      "rigId: perhaps rig in rigs 10",
      "rigTest.id: perhaps rig test in rigTests 13",
    ],
    rigs: [],
    targets: ["comboId: combo in combos 5"],
    forecasts: ["targetId: target in targets 11", "comboId: combo in combos 5"],
    rigTests: [
      "comboId: combo in combos 5",
      "rigA: perhaps rig in rigs 10",
      "rigB: perhaps rig in rigs 10",
      "pairs.0.runA: perhaps run in runs 9",
      "pairs.0.runB: perhaps run in runs 9",
    ],
    cornerReviews: ["comboId: combo in combos 5", "sessionId: perhaps session in sessions 8"],
    plans: ["comboId: combo in combos 5"],
  });
});

test("the links of a row are the ids it names, and an absent one names nothing", () => {
  expect(linksOf("runs", wholeRows.runs)).toEqual([idAt(8), idAt(5), idAt(10), idAt(13)]);
  const { rigId: _, rigTest: __, ...run } = wholeRows.runs;
  expect(linksOf("runs", run)).toEqual([idAt(8), idAt(5)]);
  expect(linksOf("cars", wholeRows.cars)).toEqual([]);
});

test("the second pair of a test of rigs is told from the first", () => {
  const pairs = [{ first: "A" }, { first: "B", runB: idAt(9) }];
  const fields = rowsNamed("rigTests", { ...wholeRows.rigTests, pairs }).map(({ field }) => field);
  expect(fields).toEqual(["comboId", "rigA", "rigB", "pairs.1.runB"]);
});

test("a row that is not well-formed names what can be read of it", () => {
  for (const pairs of [undefined, null, "none", 7])
    expect(linksOf("rigTests", withAt(wholeRows.rigTests, "pairs", pairs))).toEqual([
      idAt(5),
      idAt(10),
      idAt(10),
    ]);
  expect(linksOf("combos", { carId: 7, layoutId: idAt(4) })).toEqual([idAt(4)]);
});
