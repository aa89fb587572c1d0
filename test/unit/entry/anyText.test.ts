import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type EntryReading, parseEntry, parsePaste, readTime, withChoice } from "#entry";
import { aContext } from "./aContext.ts";

const valid = [
  "1:23.456",
  "1'23\"456",
  "1.23.456",
  "83.456",
  "1:02:03.4",
  "123456",
  "4912",
  "24.9",
  "+0.6",
  "-0.25",
  "27.1 31.42 24.9",
  "1:23.42 27.1 31.42 24.9",
  "1:44.9 f@5",
  "34912fs@3",
  "4912 off5",
  "1:44.9 slow zone@2",
  "f / into the wall",
  "1:23.9 / tow",
];
const sign = fc.oneof(
  fc.constantFrom(..."0123456789:.,'\"+-@/ oicfsktzx\t\u00a0\u200b\u2066１：．²’″−"),
  fc.string({ unit: "binary", minLength: 1, maxLength: 1 }),
);

/** A valid entry with one sign changed, dropped, doubled or put in, several times over. */
const mutated = fc
  .tuple(
    fc.constantFrom(...valid),
    fc.array(fc.tuple(fc.nat(), fc.constantFrom("change", "drop", "double", "put in"), sign), {
      minLength: 1,
      maxLength: 3,
    }),
  )
  .map(([entry, changes]) =>
    changes.reduce((text, [place, how, other]) => {
      const at = text.length === 0 ? 0 : place % text.length;
      const here = text.charAt(at);
      const middle = { change: other, drop: "", double: here + here, "put in": other + here }[how] ?? "";
      return text.slice(0, at) + middle + text.slice(at + 1);
    }, entry),
  );

const anyText = fc.oneof(fc.string({ unit: "binary" }), fc.string({ unit: "grapheme" }), mutated, mutated);

function isSound(text: string, reading: EntryReading) {
  if (reading.ok) {
    const { ms, decimals, sectors = [] } = reading.lap;
    for (const time of [ms, ...sectors])
      if (time !== undefined) expect(Number.isSafeInteger(time) && time > 0).toBe(true);
    expect(ms === undefined).toBe(decimals === undefined);
    if (decimals !== undefined) expect([0, 1, 2, 3]).toContain(decimals);
    expect(ms !== undefined || reading.lap.remarks.length > 0).toBe(true);
    return;
  }
  const { at, length, wrong, right } = reading.problem;
  expect(Number.isInteger(at) && at >= 0 && length >= 0 && at + length <= text.length).toBe(true);
  expect(wrong.length > 0 && right.length > 0 && wrong.length < 300 && right.length < 300).toBe(true);
  expect(`${wrong}${right}`).not.toMatch(/NaN|undefined|Infinity|!/);
}

const contexts = [
  aContext(),
  aContext({ sectors: 3, displayDecimals: 1 }),
  aContext({
    usualMs: undefined,
    pbMs: undefined,
    previousMs: undefined,
    paceTimes: [],
    displayDecimals: 2,
    corners: undefined,
  }),
];

describe("any text at all", () => {
  it("is read as a sound lap or refused with a place, a reason and what would be right", () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom(...contexts), (text, context) => {
        // Signs of the text itself may stand in a sentence; they are not what this looks for.
        fc.pre(!/[!]|NaN|undefined|Infinity/.test(text));
        isSound(text, parseEntry(text, context));
      }),
      { seed: 31, numRuns: 10_000 },
    );
  });

  it("is read with each of the choices it is refused with, as another lap each", () => {
    const line = fc
      .tuple(
        fc.nat(99_999),
        fc.constantFrom("", "f", "s5", " off", "c", " t@3", "z", "o"),
        fc.constantFrom("", " / wide"),
      )
      .map(([digits, remarks, note]) => `${String(digits).padStart(4, "0")}${remarks}${note}`);
    const unsure = aContext({ paceTimes: [84_000], usualMs: 84_000, pbMs: 84_000 });
    fc.assert(
      fc.property(line, fc.constantFrom(...contexts, unsure), (text, context) => {
        const reading = parseEntry(text, context);
        if (reading.ok) return;
        const { choices = [] } = reading.problem;
        const times = choices.map((choice) => {
          const chosen = parseEntry(withChoice(text, reading.problem, choice), context);
          return chosen.ok ? chosen.lap.ms : undefined;
        });
        expect(times).not.toContain(undefined);
        expect(new Set(times).size).toBe(choices.length);
        expect(choices.length).not.toBe(1);
      }),
      { seed: 33, numRuns: 5_000 },
    );
  });

  it("never makes the reader of one time throw, and what it takes is a time", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const reading = readTime(text, { nearMs: 83_456, previousMs: 83_000 });
        if (reading.ok) expect(Number.isSafeInteger(reading.ms) && reading.ms > 0).toBe(true);
      }),
      { seed: 32, numRuns: 5_000 },
    );
  });

  it("is pasted without a line lost", () => {
    fc.assert(
      fc.property(fc.array(mutated), (entries) => {
        const lines = entries.map((entry) => entry.replace(/[\n\r\u0085\u2028\u2029]/g, "x"));
        const read = parsePaste(lines.join("\n"), aContext()).lines;
        const full = lines.filter(
          (line) => parseEntry(line, aContext()).ok || /[^\s\p{Cc}\p{DI}]/u.test(line),
        );
        expect(read.map(({ text }) => text)).toEqual(full);
      }),
      { seed: 33, numRuns: 300 },
    );
  });

  it("is read the same twice", () => {
    fc.assert(
      fc.property(mutated, (text) => {
        expect(parseEntry(text, aContext())).toEqual(parseEntry(text, aContext()));
      }),
      { seed: 34 },
    );
  });
});
