import { expect, it } from "vitest";
import { apexTable, sayApexPoint } from "../../../../src/charts/corners/apexTable.ts";
import { csvCells } from "../../../../src/charts/frame/chartTable.ts";

it("each place of the apex stands with what it loses", () => {
  expect(
    csvCells(
      apexTable([
        { percent: 50, lost: 0.1304 },
        { percent: 62, lost: 0 },
      ]),
    ),
  ).toEqual([
    ["apex_percent", "lost_s"],
    [50, 0.13],
    [62, 0],
  ]);
  expect([50, 62].map((percent) => sayApexPoint({ percent, lost: percent === 62 ? 0 : 0.1304 }))).toEqual([
    "apex after 50 % of the turn: 0.13 s lost",
    "apex after 62 % of the turn: the best place",
  ]);
});
