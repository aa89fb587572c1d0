import { describe, expect, it } from "vitest";
import { longestSource } from "#domain";
import { readReferenceLap } from "#entry";

const problemsOf = (time: string, source: string) => {
  const read = readReferenceLap({ time, source }, 3);
  return read.ok ? undefined : read.problems;
};

describe("a reference lap that is typed", () => {
  it("is a time to its decimals, and where it comes from without the spaces around it", () => {
    expect(readReferenceLap({ time: "1:23.4", source: " Jo, same car " }, 3)).toEqual({
      ok: true,
      value: { ms: 83_400, decimals: 1, source: "Jo, same car" },
    });
  });

  it("is read by the decimals the simulator shows where the point is left out", () => {
    expect(readReferenceLap({ time: "12345", source: "Jo" }, 2)).toMatchObject({
      value: { ms: 83_450, decimals: 2 },
    });
  });

  it("says of each field what is wrong with it, and of no other", () => {
    expect(problemsOf("1:75", "Jo")).toMatchObject({ time: { at: 2 }, source: undefined });
    expect(problemsOf("1:23.4", "  ")).toEqual({
      time: undefined,
      source: {
        wrong: "Nothing says where the time comes from.",
        right: "Write who drove it, or where it was shown.",
      },
    });
    expect(problemsOf("", "")).toMatchObject({ time: {}, source: {} });
  });

  it("may say at length where it comes from, but not without end", () => {
    expect(problemsOf("1:23.4", "x".repeat(longestSource))).toBeUndefined();
    expect(problemsOf("1:23.4", "x".repeat(longestSource + 1))?.source).toEqual({
      wrong: `This is ${longestSource + 1} signs long.`,
      right: `Write at most ${longestSource}.`,
    });
  });
});
