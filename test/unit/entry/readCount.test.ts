import { describe, expect, it } from "vitest";
import { readCount } from "#entry";

const read = (text: string) => {
  const reading = readCount(text);
  return reading.ok ? [reading.good, reading.tries] : `${reading.problem.wrong} ${reading.problem.right}`;
};

describe("a count of a drill's tries", () => {
  it.each(["7 of 10", "7/10", " 7 / 10 ", "7 10", "7.10", "7,10", "7OF10"])("reads %s", (text) => {
    expect(read(text)).toEqual([7, 10]);
  });

  it("reads none of none, by which a count is taken away", () => {
    expect(read("0 of 0")).toEqual([0, 0]);
  });

  it.each([
    ["", "Nothing is written here. Write how many worked, of how many tries: 7 of 10, or 7/10."],
    ["7", "“7” is no count. Write how many worked, of how many tries: 7 of 10, or 7/10."],
    [
      "seven of ten",
      "“seven of ten” is no count. Write how many worked, of how many tries: 7 of 10, or 7/10.",
    ],
    ["12 of 10", "12 of 10: more worked than were tried. Write 10 of 12, or other numbers."],
    ["7 of 1000", "1000 tries are too many for one run. 999 is the most."],
  ])("says what is wrong with “%s”", (text, said) => {
    expect(read(text)).toBe(said);
  });
});
