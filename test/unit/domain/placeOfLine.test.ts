import { expect, test } from "vitest";
import { lineText, type PlannedRun, placeOfLine } from "#domain";

const lines: readonly PlannedRun[] = [
  { id: "a", purpose: "Warm up", laps: 3 },
  { id: "b", purpose: "Corner 5", laps: 8 },
];

test("a line is found by its id, whatever it says by now", () => {
  expect(placeOfLine(lines, { id: "b", purpose: "Corner 6" })).toBe(1);
});

test("under another id it is found by what it says", () => {
  expect(placeOfLine(lines, { id: "z", laps: 8, purpose: "Corner 5" })).toBe(1);
  expect(placeOfLine(lines, { purpose: "Warm up", laps: 3 })).toBe(0);
  expect(placeOfLine(lines, { id: "z", purpose: "Corner 5", laps: 7 })).toBe(-1);
});

test("what a line says leaves its id out", () => {
  expect(lineText({ id: "a", purpose: "Warm up", laps: 3 })).toBe(lineText({ laps: 3, purpose: "Warm up" }));
});
