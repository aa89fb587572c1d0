import { expect, test } from "vitest";
import { lapSpan } from "../../../../../src/screens/log/laps/lapSpan.ts";
import { wholeNumber } from "../../../../../src/screens/log/laps/numbers.ts";
import { runInWords } from "../../../../../src/screens/log/runs/runWords.ts";

test("an empty field is no number, and a number is read whole", () => {
  expect(wholeNumber("  ", "Grid place", 99)).toEqual({ ok: true, value: undefined });
  expect(wholeNumber(" 8 ", "Grid place", 99)).toEqual({ ok: true, value: 8 });
});

test.each(["8.5", "-1", "eight", "100", "1e2"])("%s is no place on a grid of 99", (text) => {
  const read = wholeNumber(text, "Grid place", 99);
  expect(read).toMatchObject({ ok: false, problem: expect.stringContaining(`Grid place: “${text}”`) });
});

test("laps to move run from the first named to the last, or to the end", () => {
  expect(lapSpan("3", "5", 8)).toEqual({ ok: true, first: 3, last: 5 });
  expect(lapSpan("3", "", 8)).toEqual({ ok: true, first: 3, last: 8 });
  expect(lapSpan("8", "8", 8)).toEqual({ ok: true, first: 8, last: 8 });
});

test("a lap that is not there is said at its own field", () => {
  expect(lapSpan("", "", 8)).toMatchObject({ ok: false, at: "first" });
  expect(lapSpan("0", "", 8)).toMatchObject({ ok: false, at: "first" });
  expect(lapSpan("9", "", 8)).toMatchObject({ ok: false, at: "first" });
  expect(lapSpan("3", "2", 8)).toMatchObject({
    ok: false,
    at: "last",
    problem: expect.stringContaining("3 to 8"),
  });
  expect(lapSpan("3", "9", 8)).toMatchObject({ ok: false, at: "last" });
});

test("a race shows grid and finish in its heading, other runs their effort", () => {
  const run = { kind: "race", effort: "full", surface: "dry" } as const;
  expect(runInWords({ ...run, gridPlace: 5, finishPlace: 3 })).toBe("race · dry · grid 5 · finish 3");
  expect(runInWords({ ...run, finishPlace: 3 })).toBe("race · dry · finish 3");
  expect(runInWords({ ...run, kind: "pace", gridPlace: 5, guest: "Jo" })).toBe(
    "pace, full effort · dry · Jo driving",
  );
});
