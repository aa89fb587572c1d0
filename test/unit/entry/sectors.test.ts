import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type EntryContext, parseEntry } from "#entry";
import { aContext } from "./aContext.ts";

const read = (text: string, changes: Partial<EntryContext> = { sectors: 3 }) =>
  parseEntry(text, aContext(changes));

describe("sectors", () => {
  it("add up to the lap, known to the fewest decimals among them", () => {
    expect(read("27.1 31.42 24.9")).toEqual({
      ok: true,
      lap: {
        ms: 83_420,
        decimals: 1,
        sectors: [27_100, 31_420, 24_900],
        sectorDecimals: [1, 2, 1],
        remarks: [],
      },
      form: "sectors",
      asks: [],
    });
    expect(read("27,1 31,42 24,9")).toEqual(read("27.1 31.42 24.9"));
  });

  it("may stand behind the lap time, with remarks and a note", () => {
    expect(read("1:23.420 27.1 31.42 24.9 c@2 / wide")).toMatchObject({
      lap: {
        ms: 83_420,
        decimals: 3,
        sectors: [27_100, 31_420, 24_900],
        remarks: [{ kind: "cut" }],
        note: "wide",
      },
    });
    expect(read("3420 27.1 31.42 24.9")).toMatchObject({ lap: { ms: 83_420 }, form: "short" });
  });

  it("may miss the lap time by 2 ms and half of each last digit", () => {
    // Three decimals each: 2 ms + 4 × 0.5 ms.
    expect(read("1:23.424 27.100 31.420 24.900").ok).toBe(true);
    expect(read("1:23.425 27.100 31.420 24.900").ok).toBe(false);
    // Tenths: 2 ms + 4 × 50 ms.
    expect(read("1:23.6 27.1 31.4 24.9").ok).toBe(true);
    expect(read("1:23.7 27.1 31.4 24.9")).toMatchObject({
      problem: { at: 0, length: 6, wrong: "The sectors add up to 1:23.4, 0.300 s less than 1:23.7." },
    });
  });

  it("are said with all decimals that were typed where their sum is wrong", () => {
    expect(read("1:00.000 31.42 24.9", {})).toMatchObject({
      problem: {
        wrong: "The sectors add up to 56.32, 3.680 s less than 1:00.000.",
        right: expect.stringContaining("then it is 56.32."),
      },
    });
  });

  it("are refused in a number the layout does not have", () => {
    expect(read("27.1 31.42")).toMatchObject({
      problem: { wrong: "This layout has 3 sectors, and 2 times are typed." },
    });
    expect(read("1:33.4 27.1 31.4 24.9 10.0").ok).toBe(false);
    expect(read("27.1 31.42 24.9", { sectors: 1 }).ok).toBe(false);
  });

  it("are not separated by commas", () => {
    expect(read("27.1,31.42,24.9")).toMatchObject({
      problem: { right: "Separate sectors by spaces: 27.1 31.42 24.9." },
    });
    expect(read("27,1,31,42,24,9")).toMatchObject({
      problem: { right: "Separate sectors by spaces: 27,1 31,42 24,9." },
    });
    expect(read("27.1, 31.42, 24.9").ok).toBe(false);
  });

  it("say which one is wrong", () => {
    expect(read("27.1 314 24.9")).toMatchObject({ problem: { at: 5, length: 3 } });
    expect(read("27.1 +0.4 24.9")).toMatchObject({ problem: { at: 5 } });
    expect(read("27.1 31.4222 24.9")).toMatchObject({ problem: { at: 8, length: 4 } });
  });

  it("give back every sector, and a sum of them all", () => {
    const sector = fc.integer({ min: 100, max: 599_999 });
    fc.assert(
      fc.property(fc.array(sector, { minLength: 2, maxLength: 8 }), (sectors) => {
        const text = sectors
          .map((ms) => `${Math.floor(ms / 1000)}.${String(ms % 1000).padStart(3, "0")}`)
          .join(" ");
        const reading = read(text, { sectors: sectors.length });
        expect(reading).toMatchObject({ lap: { sectors, ms: sectors.reduce((a, b) => a + b), decimals: 3 } });
      }),
      { seed: 11 },
    );
  });
});
