import { expect, it } from "vitest";
import { parseEntry, parsePaste, sourceOf } from "#entry";
import { aContext } from "./aContext.ts";

it.each(["1:24.900", "1:24.9", "84,5", "1:25", "+0.25", "27.1 31.42 24.9", "1:23.4 27.1 31.42 24.9", "f"])(
  "%s is typed, in however few decimals",
  (text) => {
    const reading = parseEntry(text, aContext({ sectors: 3 }));
    expect(reading.ok && sourceOf(reading)).toBe("typed");
  },
);

it.each([
  ["from memory", "memory"],
  ["in tenths", "typed"],
  ["", "typed"],
])("a copied row that says “%s” is %s", (said, source) => {
  const [line] = parsePaste(`3\t1:24.9\t\t\t${said}\n`, aContext()).lines;
  expect(line?.reading.ok && sourceOf(line.reading)).toBe(source);
});
