import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  formatDelta,
  formatDifference,
  formatLapTime,
  formatSeconds,
  type Remark,
  remarkInWords,
  remarkKinds,
  saySectors,
  signsOf,
} from "#domain";
import { type EntryReading, parseEntry, parsePaste, readTime, sourceOf } from "#entry";
import { hundredths, thousandths } from "../../../src/words/amount.ts";
import { saySigned } from "../../../src/words/signed.ts";
import { aLine, aPlace, type StoredLap, typedLaps } from "../../support/typedLaps.ts";
import { aContext } from "./aContext.ts";

const decimals = fc.integer({ min: 0, max: 3 });
const unitOf = (digits: number) => 10 ** (3 - digits);
/** A time from a minute on: under one, the entry line's short form completes seconds, as it says while they are typed. */
const aTime = fc.tuple(fc.integer({ min: 60_000, max: 86_400_000 }), decimals).map(([ms, digits]) => ({
  ms: Math.ceil(ms / unitOf(digits)) * unitOf(digits),
  decimals: digits,
}));
const runs = { seed: 704, numRuns: 500 };

function wrongOf(reading: EntryReading): string {
  if (reading.ok) throw new Error(`read as ${reading.lap.ms} ${JSON.stringify(reading.lap.remarks)}`);
  return reading.problem.wrong;
}
const pasted = (text: string, context = aContext()) =>
  parsePaste(`${text}\n`, context).lines.map(({ reading }) => reading);

describe("a printed time", () => {
  it("is read as the same time, typed, pasted or in a field", () => {
    fc.assert(
      fc.property(aTime, (time) => {
        const shown = formatLapTime(time.ms, time.decimals);
        expect(parseEntry(shown, aContext())).toMatchObject({ lap: { ...time, remarks: [] } });
        expect(pasted(shown)).toMatchObject([{ lap: { ...time, remarks: [] } }]);
        expect(readTime(shown)).toMatchObject({ ok: true, ...time });
      }),
      runs,
    );
  });

  it.each([" s", "\u00a0s", "\u202fs"])(
    "with its unit %j is asked about when typed, and refused when pasted",
    (unit) => {
      fc.assert(
        fc.property(aTime, ({ ms, decimals: digits }) => {
          const shown = `${formatLapTime(ms, digits)}${unit}`;
          const typed = parseEntry(shown, aContext());
          expect(typed.ok && typed.asks[0]?.fact).toContain("if it means seconds, take it away");
          const [reading] = pasted(shown);
          expect(reading && wrongOf(reading)).toBe("“s” behind a space may be a spin or the unit, seconds.");
          expect(readTime(shown).ok).toBe(false);
        }),
        runs,
      );
    },
  );

  it("keeps s for a spin behind digits and without a space, also among other remarks", () => {
    for (const text of ["34912 s", "1:34.912s", "1:34.912 fs", "1:34.912 s@4", "+9.2s"]) {
      const typed = parseEntry(text, aContext());
      expect(typed).toMatchObject({ ok: true });
      if (!typed.ok) continue;
      expect(typed.asks.map(({ why }) => why)).not.toContain("unit or spin");
      expect(typed.lap.remarks.map(({ kind }) => kind)).toContain("spin");
    }
  });
});

describe("a printed difference", () => {
  const previousMs = 84_000;
  const context = aContext({ previousMs, previousDecimals: 3 });
  const aDifference = fc.tuple(fc.integer({ min: -80_000, max: 4_000_000 }), decimals);

  it("gives the lap that is that much faster or slower", () => {
    fc.assert(
      fc.property(aDifference, ([ms, digits]) => {
        const shown = formatDelta(ms, digits);
        const rounded = Math.sign(ms) * Math.round(Math.abs(ms) / unitOf(digits)) * unitOf(digits);
        const reading = parseEntry(shown, context);
        // “+100” may be tenths or seconds, and is refused with both.
        if (reading.ok || digits > 0)
          expect(reading).toMatchObject({ form: "relative", lap: { ms: previousMs + rounded, remarks: [] } });
        expect(formatDifference({ ms: previousMs }, { ms: previousMs + ms })).toBe(formatDelta(ms));
      }),
      runs,
    );
  });

  it("with its unit is never a spin unasked", () => {
    for (const unit of [thousandths, hundredths])
      fc.assert(
        fc.property(fc.integer({ min: -9000, max: 9000 }), (ms) => {
          const typed = parseEntry(saySigned(ms, unit), context);
          expect(!typed.ok || typed.asks[0]?.why === "unit or spin").toBe(true);
          for (const reading of pasted(saySigned(ms, unit), context)) expect(reading.ok).toBe(false);
        }),
        runs,
      );
  });

  it("is named where it is a spread", () => {
    for (const shown of ["± 0.31 s", "± 0.31 s · 0.37 %", "±0.31"])
      expect(wrongOf(parseEntry(shown, context))).toBe(
        `“${shown}” lies to both sides: it is a spread, no lap time and no difference.`,
      );
  });
});

describe("sentences and figures of the app", () => {
  it.each([
    "about 1:23.4",
    "0.312 s off PB",
    "the same as your PB",
    "1:24.012 is a new PB, 0.108 s faster than the old one.",
    "Usual 1:24.301, scatter ± 0.31 s",
    "0.37 %",
    "1:24.200 to 1:24.400: 12 of 104 laps",
    "pace lap 7, run 2: 1:24.402, worth a second look: outside the limits",
    "Tue 3 Aug 2027\t24\t1:24.402\t1:24.100\t1:24.900\t1:23.704\t—\tpresent",
    "pace\t+0.312 s",
    "lap\ttime\tto last clean\tto PB\tremarks",
    "\tsectors 27.100 · 32.900 · 24.900",
  ])("%j is no lap", (text) => {
    expect(parseEntry(text, aContext()).ok).toBe(false);
    for (const reading of pasted(text)) expect(reading.ok).toBe(false);
  });

  it("a length of time with its unit, which those under a minute have, is never a lap unasked", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 59_499 }), decimals, (ms, digits) => {
        const typed = parseEntry(formatSeconds(ms, digits), aContext());
        const isAsked = typed.ok && typed.asks[0]?.why === "unit or spin";
        // With no decimals it is digits, which are typed with an s for a spin and never printed for a lap.
        if (digits > 0) expect(!typed.ok || isAsked).toBe(true);
      }),
      runs,
    );
  });
});

describe("rows copied from the table of laps", () => {
  const remark = fc.record(
    {
      kind: fc.constantFrom(...remarkKinds.map(({ kind }) => kind)),
      corner: fc.integer({ min: 1, max: 12 }),
    },
    { requiredKeys: ["kind"] },
  );
  const remarks = fc.uniqueArray(remark, {
    selector: ({ kind, corner }) => `${kind} ${corner}`,
    maxLength: 3,
  });
  const time = fc.tuple(fc.integer({ min: 1000, max: 4_000_000 }), decimals).map(([ms, digits]) => ({
    ms: Math.ceil(ms / unitOf(digits)) * unitOf(digits),
    decimals: digits,
  }));
  const sectored = fc
    .array(fc.tuple(fc.integer({ min: 1000, max: 59_000 }), decimals), { minLength: 3, maxLength: 3 })
    .map((all) => {
      const sectors = all.map(([ms, digits]) => ms - (ms % unitOf(digits)));
      const sectorDecimals = all.map(([, digits]) => digits);
      return { ms: sectors.reduce((a, b) => a + b), decimals: 3, sectors, sectorDecimals };
    });
  const aLap = fc.record({
    time: fc.oneof(time, sectored),
    isUntimed: fc.boolean(),
    remarks: remarks as fc.Arbitrary<Remark[]>,
    note: fc.constantFrom(undefined, "wide", "cut", "PB / s", "1:23.4 · off"),
    before: fc.constantFrom("", "PB", "was PB"),
    isNotBest: fc.boolean(),
    isFromMemory: fc.boolean(),
    signOfDecimals: fc.constantFrom("", "in tenths", "in hundredths", "in whole seconds"),
    differences: fc.array(fc.constantFrom("", "+0.312", "−0.108", "±0.000", "+1:02.300"), {
      minLength: 2,
      maxLength: 3,
    }),
    isHeard: fc.boolean(),
  });

  it("are the laps of those rows, with the words for those who listen or without", () => {
    fc.assert(
      fc.property(aLap, fc.integer({ min: 1, max: 999 }), (row, number) => {
        const isUntimed = row.isUntimed && row.remarks.length > 0 && !("sectors" in row.time);
        const shown = isUntimed ? "no time" : formatLapTime(row.time.ms, row.time.decimals);
        const sectors = "sectors" in row.time ? saySectors(row.time) : ["", "", ""];
        const said = [
          row.before,
          row.isNotBest && "not a PB",
          row.remarks.map(remarkInWords).join(", "),
          row.isFromMemory ? "from memory" : row.signOfDecimals,
        ]
          .filter(Boolean)
          .join(" · ");
        const [first = "", ...others] = row.differences;
        const heard = first === "" ? "" : `${first} ${first.startsWith("−") ? "faster" : "slower"}`;
        const text = [
          String(number),
          row.isHeard ? `Edit lap ${number}: ${shown}` : shown,
          row.isHeard ? heard : first,
          ...others,
          ...sectors,
          [said, row.note === undefined ? "" : `/ ${row.note}`].filter(Boolean).join(" "),
        ].join("\t");
        const lap = {
          ...(isUntimed ? {} : row.time),
          remarks: row.remarks,
          ...(row.note === undefined ? {} : { note: row.note }),
          ...(row.isNotBest && { isNotBest: true }),
        };
        const [line, ...more] = parsePaste(`${text}\n`, aContext({ sectors: 3 })).lines;
        expect([line?.text, more]).toEqual([text, []]);
        if (line?.reading.ok !== true) throw new Error(`not read: ${text}`);
        expect(line.reading.lap).toEqual(lap);
        expect(sourceOf(line.reading)).toBe(row.isFromMemory ? "memory" : "typed");
      }),
      { seed: 705, numRuns: 1000 },
    );
  });

  it("are the laps that were typed, in whatever form", () => {
    fc.assert(
      fc.property(fc.array(aLine, { minLength: 1, maxLength: 8 }), aPlace, (lines, place) => {
        for (const { isOdd: _, ...lap } of typedLaps(lines, place)) {
          const text = printed(lap, place.displayDecimals);
          const [line] = parsePaste(`${text}\n`, place).lines;
          if (line?.reading.ok !== true) throw new Error(`not read: ${text}`);
          const { lap: back } = line.reading;
          expect({ ...back, source: sourceOf(line.reading) }).toEqual(lap);
        }
      }),
      { seed: 706, numRuns: 1000 },
    );
  });

  it("of a lap that does not say the decimals of its sectors is read however well they were known", () => {
    const context = aContext({ sectors: 3 });
    const old = { ms: 83_500, decimals: 1, sectors: [27_100, 31_400, 24_900], remarks: [] };
    const [far] = pasted(printed({ ...old, source: "typed" }), context);
    expect(far?.ok && far.lap).toEqual(old);
    const [near] = pasted(printed({ ...old, ms: 83_400, source: "typed" }), context);
    expect(near?.ok && near.lap).toEqual({ ...old, ms: 83_400, sectorDecimals: [3, 3, 3] });
    const [tenths] = pasted(printed({ ...old, sectorDecimals: [1, 1, 1], source: "typed" }), context);
    expect(tenths?.ok && tenths.lap).toEqual({ ...old, sectorDecimals: [1, 1, 1] });
    const [wrong] = pasted(printed({ ...old, ms: 84_500, source: "typed" }), context);
    expect(wrong && wrongOf(wrong)).toContain("The sectors add up to 1:23.4");
  });

  it.each([
    ["1\t1:23.4\t\t\tcounted as 1:23.52", "another time than is shown"],
    ["1\tno time\t\t\tcounted as 1:23.52 · off", "no time"],
  ])("%j is no lap: %s", (text) => {
    for (const reading of pasted(text)) expect(reading.ok).toBe(false);
  });
});

/** A lap as the table of laps prints it. */
function printed(lap: StoredLap, displayDecimals = 3): string {
  const shown = lap.ms === undefined ? "no time" : formatLapTime(lap.ms, lap.decimals);
  const sectors = lap.sectors === undefined ? ["", "", ""] : saySectors(lap);
  const said = [signsOf(lap, displayDecimals), lap.note === undefined ? "" : `/ ${lap.note}`]
    .filter(Boolean)
    .join(" ");
  return ["7", shown, "", "", ...sectors, said].join("\t");
}
