import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { remarkKinds } from "#domain";
import { parseEntry, type TypedLap, writeEntry } from "#entry";
import { aContext } from "./aContext.ts";

const remark = fc.record(
  { kind: fc.constantFrom(...remarkKinds.map(({ kind }) => kind)), corner: fc.integer({ min: 1, max: 12 }) },
  { requiredKeys: ["kind"] },
);
const remarks = fc.uniqueArray(remark, {
  selector: ({ kind, corner }) => `${kind} ${corner}`,
  minLength: 1,
  maxLength: 4,
});
const note = fc
  .string({ unit: "grapheme", minLength: 1, maxLength: 30 })
  .filter((text) => /^[^\s\p{Cc}\p{DI}]+$/u.test(text));
const time = fc
  .tuple(fc.integer({ min: 100, max: 86_400_000 }), fc.integer({ min: 0, max: 3 }))
  .map(([ms, decimals]) => ({ ms: Math.ceil(ms / 10 ** (3 - decimals)) * 10 ** (3 - decimals), decimals }));
const sectored = fc
  .array(fc.tuple(fc.integer({ min: 1000, max: 99_999 }), fc.integer({ min: 0, max: 3 })), {
    minLength: 3,
    maxLength: 3,
  })
  .map((all) => {
    const sectors = all.map(([ms, decimals]) => ms - (ms % 10 ** (3 - decimals)));
    const sectorDecimals = all.map(([, decimals]) => decimals);
    return { ms: sectors.reduce((a, b) => a + b), decimals: 3, sectors, sectorDecimals };
  });

const aLap: fc.Arbitrary<TypedLap> = fc
  .tuple(fc.oneof(time, sectored, fc.constant({})), remarks, fc.option(note, { nil: undefined }))
  .map(([times, marks, words]) => ({
    ...times,
    remarks: marks,
    ...(words === undefined ? {} : { note: words }),
  }));

describe("a lap written as a line", () => {
  it("is the line a driver would type", () => {
    const lap = { ms: 83_456, decimals: 3, sectors: [27_100, 31_456, 24_900], remarks: [], note: "wide" };
    expect(writeEntry(lap)).toBe("1:23.456 27.1 31.456 24.9 / wide");
    expect(writeEntry({ remarks: [{ kind: "off", corner: 5 }, { kind: "spin" }] })).toBe("f@5 s");
    expect(writeEntry({ ms: 59_100, decimals: 1, remarks: [] })).toBe("0:59.1");
  });

  it("keeps the milliseconds of a lap known to fewer decimals", () => {
    expect(writeEntry({ ms: 84_056, decimals: 1, remarks: [] })).toBe("1:24.056");
  });

  it("has each sector with the digits that were typed", () => {
    const lap = { ms: 83_500, decimals: 1, sectors: [27_100, 31_420, 25_000], remarks: [] };
    expect(writeEntry({ ...lap, sectorDecimals: [3, 2, 0] })).toBe("1:23.5 27.100 31.42 0:25");
    expect(writeEntry(lap)).toBe("1:23.5 27.1 31.42 25.0");
  });

  it("of before sectors said their decimals is read, though its sum is as far off as those allowed", () => {
    const lap = { ms: 83_500, decimals: 1, sectors: [27_100, 31_400, 24_900], remarks: [] };
    expect(parseEntry(writeEntry(lap), aContext({ sectors: 3 }))).toMatchObject({ ok: true, lap });
  });

  it("is read as the same lap again", () => {
    fc.assert(
      fc.property(aLap, (lap) => {
        expect(parseEntry(writeEntry(lap), aContext({ sectors: 3 }))).toMatchObject({ ok: true, lap });
      }),
      { seed: 51, numRuns: 1000 },
    );
  });
});
