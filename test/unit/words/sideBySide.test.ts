import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import { sayShiftEnds, sideBySideReading, sideBySideTitle } from "#words";

const shift = (estimate: number, low: number, high: number, by: "lap" | "run" = "lap") => ({
  apart: undefined,
  shift: known({ estimate, low, high, by, first: 6, second: 8 }),
});

describe("two side by side in words", () => {
  it("claim a difference of laps for these laps alone", () => {
    const clear = shift(-240, -430, -52);
    expect(sideBySideTitle(clear)).toBe("The later laps were faster by 0.24 s, very likely at least 0.05 s");
    expect(sideBySideReading(clear)).toBe(
      "It tells of these 6 and 8 laps alone: two runs of one evening can differ as much with nothing changed.",
    );
    expect(sideBySideTitle(shift(240, 52, 430, "run"))).toBe(
      "The later session was slower by 0.24 s, very likely at least 0.05 s",
    );
  });

  it("say what may be chance, what is the same, and what cannot be told", () => {
    expect(sideBySideTitle(shift(-90, -301, 120))).toBe(
      "May be chance: between 0.31 s faster and 0.12 s slower",
    );
    expect(sideBySideTitle(shift(0, 0, 0))).toBe("No difference");
    const few = {
      apart: undefined,
      shift: unknown({ needs: 3, of: "pace run", each: { needs: 5, of: "pace lap" }, has: 1 }),
    };
    expect(sideBySideTitle(few)).toBe("Faster or slower cannot be told yet");
    expect(sideBySideReading(few)).toBe(
      "Each session needs 3 runs of 5 pace laps, and one has 1. What differs is shown all the same.",
    );
  });

  it("say why times do not compare", () => {
    const { shift: any } = shift(-240, -430, -52);
    expect(sideBySideTitle({ apart: "combo", shift: any })).toBe("Their lap times do not compare");
    expect(sideBySideReading({ apart: "wet", shift: any })).toMatch(
      /^Damp and wet laps are compared only with /,
    );
    expect(sideBySideReading({ apart: "page", shift: any })).toMatch(/^A new page lies between them\./);
  });

  it("have an interval beside the figure", () => {
    expect(sayShiftEnds({ low: -430, high: -52 })).toBe("between 0.05 and 0.43 s faster");
  });
});
