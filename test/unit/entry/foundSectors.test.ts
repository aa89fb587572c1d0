import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type EntryContext, parseEntry, parsePaste } from "#entry";
import { aContext } from "./aContext.ts";

const nothingKnown = { usualMs: undefined, pbMs: undefined, previousMs: undefined, paceTimes: [] };
const underAMinute = { usualMs: 55_600, pbMs: 55_300, paceTimes: [55_500, 55_600, 55_700] };
const read = (text: string, changes: Partial<EntryContext> = {}) => parseEntry(text, aContext(changes));

describe("sectors of a layout that has no number of sectors yet", () => {
  it("are found where their sum is near the usual lap", () => {
    expect(read("17.1 20.42 17.9", underAMinute)).toEqual({
      ok: true,
      lap: {
        ms: 55_420,
        decimals: 1,
        sectors: [17_100, 20_420, 17_900],
        sectorDecimals: [1, 2, 1],
        remarks: [],
      },
      form: "sectors",
      asks: [],
    });
    expect(read("27.1 31.42 12.3 12.6 f@5 / wide")).toMatchObject({
      lap: { ms: 83_420, sectors: [27_100, 31_420, 12_300, 12_600], note: "wide" },
    });
    expect(read("1:41.2 1:02.3 1:50.0", { usualMs: 270_000 })).toMatchObject({ lap: { ms: 273_500 } });
  });

  it("are found with nothing to compare them with, after a second Enter", () => {
    expect(read("17.1 20.42 17.9", nothingKnown)).toMatchObject({
      lap: { ms: 55_420, sectors: [17_100, 20_420, 17_900] },
      asks: [
        {
          why: "sectors found",
          fact: "Read as 3 sectors of one lap, 55.42 together.",
          again: "if this layout has 3 sectors",
          instead: "; laps go one a line",
        },
      ],
    });
  });

  it("are not found in laps with their minutes, nor in a lap time whose sectors do not add up", () => {
    expect(read("1:23.4 1:23.6 1:23.9", nothingKnown).ok).toBe(false);
    expect(read("1:23.42 27.1 31.42", nothingKnown).ok).toBe(false);
    expect(read("1:23.42 27.1 31.42 25.9", nothingKnown)).toMatchObject({
      problem: { wrong: expect.stringMatching(/add up to 1:24\.42/) },
    });
    expect(read("55.42 17.1 20.42 18.9", underAMinute)).toMatchObject({
      problem: { wrong: "The sectors add up to 56.42, 1.000 s more than 55.42." },
    });
    expect(read("55.2 55.4 55.1", underAMinute).ok).toBe(false);
  });

  it("are refused where it is not clear, with the place where their number is set", () => {
    for (const text of ["17.1 20.42 17.9", "27.1 31.42"])
      expect(read(text)).toMatchObject({
        problem: { right: expect.stringContaining("Corners, Layout, “Sectors the simulator times”") },
      });
    expect(read("17.1 20.42 17.9")).toMatchObject({
      problem: {
        wrong: "It is not clear that these are sectors: they add up to 55.42, far from your usual 1:23.456.",
      },
    });
    expect(read("27.1 31.42", { sectors: 3 })).toMatchObject({
      problem: { right: expect.stringContaining("Corners, Layout") },
    });
  });

  it("stay a lap time with its sectors wherever the sum says so", () => {
    const sector = fc.integer({ min: 10_000, max: 59_999 });
    const written = (ms: number) => (ms / 1000).toFixed(3);
    fc.assert(
      fc.property(fc.array(sector, { minLength: 2, maxLength: 6 }), fc.boolean(), (sectors, isKnown) => {
        const ms = sectors.reduce((sum, one) => sum + one, 0);
        const time = `${Math.floor(ms / 60_000)}:${written(ms % 60_000).padStart(6, "0")}`;
        const context = isKnown ? { usualMs: ms } : nothingKnown;
        expect(read([time, ...sectors.map(written)].join(" "), context)).toMatchObject({
          form: "full",
          lap: { ms, sectors },
        });
      }),
      { seed: 12 },
    );
  });

  it("are the same number in the lines that follow them in a paste", () => {
    const { lines } = parsePaste("17.1 20.42 17.9\n17.2 20.5 18.0\n17.2 20.5", aContext(nothingKnown));
    expect(lines.map(({ reading }) => (reading.ok ? reading.lap.sectors?.length : "refused"))).toEqual([
      3,
      3,
      "refused",
    ]);
    expect(lines[1]?.reading).toMatchObject({ asks: [] });
  });
});
