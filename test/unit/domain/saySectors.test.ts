import { expect, test } from "vitest";
import { saySectors } from "#domain";

test("sectors are said with the decimals each is known to", () => {
  const sectors = [27_100, 31_420, 64_000, 24_900];
  expect(saySectors({ sectors, sectorDecimals: [1, 3, 0, 2] })).toEqual(["27.1", "31.420", "1:04", "24.90"]);
});

test("to the thousandth where the lap does not say them", () => {
  expect(saySectors({ sectors: [27_100, 31_420] })).toEqual(["27.100", "31.420"]);
  expect(saySectors({})).toEqual([]);
});
