import { expect, it } from "vitest";
import { parseEntry, sourceOf } from "#entry";
import { aContext } from "./aContext.ts";

it.each([
  ["1:24.900", "typed"],
  ["1:24.9", "memory"],
  ["84,5", "memory"],
  ["4.9", "memory"],
  ["+0.25", "typed"],
  ["+0.250", "typed"],
  ["27.1 31.42 24.9", "typed"],
  ["1:23.4 27.1 31.42 24.9", "memory"],
  ["f", "typed"],
])("%s is %s where the simulator shows thousandths", (text, source) => {
  const reading = parseEntry(text, aContext({ sectors: 3 }));
  expect(reading.ok && sourceOf(reading, 3)).toBe(source);
});

it("is not from memory in tenths where the simulator shows no more", () => {
  const reading = parseEntry("1:24.9", aContext({ displayDecimals: 1 }));
  expect(reading.ok && sourceOf(reading, 1)).toBe("typed");
});
