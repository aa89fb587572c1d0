/** Pasted lines in every form: ten times the lines cost about ten times the time. */
import { bench, describe } from "vitest";
import { parsePaste } from "#entry";
import { aContext } from "../unit/entry/aContext.ts";

const forms = ["1:23.4", "3912", "24.1", "+0.3", "-0.3", "1:52.0 f@3 / wide", "x", "", "1:40.0", "84100"];
const lines = (count: number) =>
  Array.from({ length: count }, (_, index) => forms[index % forms.length]).join("\r\n");
const [few, many] = [lines(1000), lines(10_000)];

describe("lines pasted", () => {
  bench("1,000", () => {
    parsePaste(few, aContext({}));
  });

  bench("10,000", () => {
    parsePaste(many, aContext({}));
  });
});
