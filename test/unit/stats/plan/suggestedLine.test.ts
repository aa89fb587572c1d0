import { describe, expect, it } from "vitest";
import { suggestedLine } from "#stats";

describe("the one suggestion of a plan", () => {
  it("is the first line that does more than open the evening", () => {
    expect(suggestedLine([{ rule: "warm-up" }, { rule: "again" }, { rule: "corner" }])).toBe(2);
    expect(suggestedLine([{ rule: "after a break" }, {}, { rule: "corner" }])).toBe(1);
  });

  it("is the next run of a rig test before all else", () => {
    expect(suggestedLine([{ rule: "corner" }, { rigTest: "t" }])).toBe(1);
  });

  it("is the first line where all of them only open it", () => {
    expect(suggestedLine([{ rule: "warm-up" }])).toBe(0);
    expect(suggestedLine([])).toBe(0);
  });
});
