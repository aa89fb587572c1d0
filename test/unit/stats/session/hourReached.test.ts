import { expect, test } from "vitest";
import { hourReached } from "#stats";
import { aRun } from "../someRows.ts";

const minutes = (count: number) => count * 60_000;
const run = (long: number, guest?: string) =>
  aRun(1, [minutes(long) / 2, minutes(long) / 2], guest === undefined ? {} : { guest });

test("a full hour at the wheel is told after the run that brought it, and not again", () => {
  expect(hourReached([run(30), run(29)])).toBeUndefined();
  expect(hourReached([run(30), run(30)])).toBe(1);
  expect(hourReached([run(30), run(30), run(20)])).toBeUndefined();
  expect(hourReached([run(30), run(30), run(60)])).toBe(2);
  expect(hourReached([run(50), run(90)])).toBe(2);
  expect(hourReached([])).toBeUndefined();
});

test("what a guest drove, and a lap without a time, take none of it", () => {
  expect(hourReached([run(50, "Jo"), run(30)])).toBeUndefined();
  expect(hourReached([aRun(1, [minutes(59), [undefined, "off"]])])).toBeUndefined();
});
