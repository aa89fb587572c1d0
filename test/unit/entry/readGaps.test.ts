import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { brakings, cornerRanges, type GapScale, throttles } from "#domain";
import { longestNote, readGaps, type SeenCorner, writeGaps } from "#entry";

const inCars: GapScale = { unit: "cars", carWidth: 1.8 };
const inMetres: GapScale = { unit: "metres", carWidth: 1.8 };
const seen = (text: string, scale = inCars) => {
  const reading = readGaps(text, scale);
  if (!reading.ok) throw new Error(`refused: ${reading.problem.wrong}`);
  return reading.seen;
};
const problem = (text: string, scale = inCars) => {
  const reading = readGaps(text, scale);
  if (reading.ok) throw new Error(`read as ${JSON.stringify(reading.seen)}`);
  return reading.problem;
};

describe("the gaps of a corner", () => {
  it.each<[string, SeenCorner]>([
    ["", {}],
    ["h . -0.2m", { entry: 0.9, apex: 0, exit: -0.2 }],
    ["0.3 0,25 1", { entry: 0.54, apex: 0.45, exit: 1.8 }],
    ["-h", { entry: -0.9 }],
    ["−h .5 –1", { entry: -0.9, apex: 0.9, exit: -1.8 }],
    ["? 30cm", { apex: 0.3 }],
    ["? ? .", { exit: 0 }],
    ["0 0.5w", { entry: 0, apex: 0.9 }],
    ["Ｈ ０．５ ？", { entry: 0.9, apex: 0.9 }],
    ["  h\u00a0.  ", { entry: 0.9, apex: 0 }],
  ])("are read in car widths: %j", (text, expected) => expect(seen(text)).toEqual(expected));

  it.each<[string, SeenCorner]>([
    ["0.8 1.2 2", { entry: 0.8, apex: 1.2, exit: 2 }],
    ["h 0.5w 30cm", { entry: 0.9, apex: 0.9, exit: 0.3 }],
  ])("are read in metres: %j", (text, expected) => expect(seen(text, inMetres)).toEqual(expected));

  it("half a car is half of the driver's own", () => {
    expect(seen("h", { unit: "cars", carWidth: 2 })).toEqual({ entry: 1 });
  });
});

describe("the words of a corner", () => {
  it.each<[string, SeenCorner]>([
    ["bl", { braking: "late" }],
    ["h . . be tt o", { entry: 0.9, apex: 0, exit: 0, braking: "early", throttle: "twice", isOffLine: true }],
    ["braking right throttle late off line", { braking: "right", throttle: "late", isOffLine: true }],
    ["o BL", { isOffLine: true, braking: "late" }],
    ["te / too soon / again ", { throttle: "early", note: "too soon / again" }],
    ["/ Kerb missed", { note: "Kerb missed" }],
    ["h /", { entry: 0.9 }],
  ])("are read after the gaps: %j", (text, expected) => expect(seen(text)).toEqual(expected));

  it("no two share their letters, and none is a sign of a gap", () => {
    const all = [...brakings.map((word) => `b${word[0]}`), ...throttles.map((word) => `t${word[0]}`), "o"];
    expect(new Set(all).size).toBe(8);
    expect(all).not.toContain("h");
  });
});

describe("what cannot be read is named with its place, and with what would be right", () => {
  it.each([
    ["h . . .", 6, 1, "“.” is one gap too many.", "Write at most three: entry, apex, exit."],
    ["h h..", 2, 3, "Apex: “h..” is not a number.", /h for half a car, \. for nothing left/],
    ["h 1.2.3", 2, 5, "Apex: “1.2.3” is not a number.", /Write car widths, such as 0\.3/],
    ["0.5h", 0, 4, "Entry: “h” is not a unit of this field.", /with spaces between them/],
    [". . 90", 4, 2, "Exit: 90 is out of range.", "Write a number from -5 to 25 car widths."],
    [". -21m", 2, 4, "Apex: -21m is out of range.", "Write a number from -20 to 100 m."],
    ["bl h", 3, 1, "“h” stands after a word: gaps come first.", /^Write the gaps, then the words/],
    ["h bl be", 5, 2, "“be” says braking early, and something of that was said before.", "Say it once."],
    ["h late", 2, 4, "“late” is not understood.", /^The words are: be braking early, br braking right/],
  ])("%j", (text, at, length, wrong, right) => {
    expect(problem(text)).toMatchObject({ at, length, wrong });
    expect(problem(text).right).toMatch(right);
  });

  it("with a figure in the unit that was typed, else in the one chosen", () => {
    expect(problem("1.2.3", inMetres).right).toMatch(/^Write metres, such as 0\.8, or h/);
    expect(problem("1.2.3w", inMetres).right).toMatch(/^Write car widths, such as 0\.3, or h/);
    expect(problem("1.2.3m", inCars).right).toMatch(/^Write metres, such as 0\.8, or h/);
  });

  it("a note that is too long", () => {
    expect(problem(`h / ${"x".repeat(longestNote + 1)}`).right).toBe("A corner's note has up to 2000.");
  });
});

describe("a gap that the road does not have room for", () => {
  const road = { widths: { entry: 10, apex: 10, exit: 11 }, isAssumed: false };
  const told = (text: string, scale = inCars, of = road) => {
    const reading = readGaps(text, scale, of);
    return reading.ok ? reading.seen : reading.problem;
  };

  it("is refused with the most there is: the road at that place less the car", () => {
    expect(told("50m 50m 50m")).toEqual({
      at: 0,
      length: 3,
      wrong: "Entry: 50m is more than the road leaves, which is 10 m wide there, with a car of 1.8 m.",
      right: "Write at most 4.55 car widths.",
    });
    expect(told(". . 9.3", inMetres)).toMatchObject({ at: 4, right: "Write at most 9.2 m." });
  });

  it("is taken up to the last of it, and what is asked for is taken", () => {
    expect(told("8.2 8.2 9.2", inMetres)).toEqual({ entry: 8.2, apex: 8.2, exit: 9.2 });
    expect(told("4.55")).toEqual({ entry: 8.19 });
  });

  it("on a road of assumed width is called so, and what would settle it", () => {
    const assumed = { widths: { entry: 13, apex: 13, exit: 13 }, isAssumed: true };
    expect(told("11.2m", inCars, assumed)).toEqual({ entry: 11.2 });
    expect(told("? 7", inCars, assumed)).toEqual({
      at: 2,
      length: 1,
      wrong: "Apex: 7 is more than a road leaves that is assumed to be up to 13 m wide, with a car of 1.8 m.",
      right: "Write at most 6.22 car widths, or give the road’s width in the layout.",
    });
  });

  it("may be over the edge by one whole car, not by more", () => {
    expect(told("-1 -1.8m -h")).toEqual({ entry: -1.8, apex: -1.8, exit: -0.9 });
    expect(told("-5 -5 -5")).toMatchObject({
      length: 2,
      wrong: "Entry: -5 is more than a whole car over the edge.",
      right: "Write at least -1 car widths: a car that far out has left the road.",
    });
    expect(told(". -1.81", inMetres)).toMatchObject({
      right: expect.stringMatching(/^Write at least -1\.8 m/),
    });
  });
});

const gap = fc.option(
  fc.oneof(
    fc
      .integer({ min: cornerRanges.unused.least * 100, max: cornerRanges.unused.most * 100 })
      .map((n) => n / 100),
    fc
      .double({ min: cornerRanges.unused.least, max: cornerRanges.unused.most, noNaN: true })
      .map((n) => Number(n.toFixed(6)) + 0),
  ),
  { nil: undefined },
);
const scale = fc.record({
  unit: fc.constantFrom("cars", "metres"),
  carWidth: fc.integer({ min: 50, max: 400 }).map((n) => n / 100),
}) as fc.Arbitrary<GapScale>;
const note = fc
  .string({ unit: "grapheme", minLength: 1 })
  .filter((text) => /^\S(?:.*\S)?$/s.test(text) && seen(`/${text}`).note === text);
const corner = fc
  .record({
    entry: gap,
    apex: gap,
    exit: gap,
    braking: fc.option(fc.constantFrom(...brakings), { nil: undefined }),
    throttle: fc.option(fc.constantFrom(...throttles), { nil: undefined }),
    isOffLine: fc.option(fc.constant(true as const), { nil: undefined }),
    note: fc.option(note, { nil: undefined }),
  })
  .map(
    (all) => Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as SeenCorner,
  );

test("a corner written as its line is read again as the same, in either unit and with any car", () => {
  fc.assert(
    fc.property(corner, scale, (one, by) => {
      expect(seen(writeGaps(one, by), by)).toEqual(one);
    }),
    { numRuns: 1000 },
  );
});

const word = fc.constantFrom(
  "h",
  "-h",
  ".",
  "?",
  "0.3",
  "-0.2",
  "0.8m",
  "30cm",
  "bl",
  "tt",
  "o",
  "off line",
  "x",
  "1.2.3",
  "/",
  "/ n",
);
const line = fc.oneof(
  fc.array(word, { maxLength: 7 }).map((words) => words.join(" ")),
  fc.string({ unit: "binary" }),
  fc.string({ unit: fc.constantFrom(..."h.?-0123mwcblteor/ \u00a0") }),
);

test("of any text nothing is dropped: each word before the note is a gap, one not seen or a word, or all is refused", () => {
  fc.assert(
    fc.property(line, scale, (text, by) => {
      const reading = readGaps(text, by);
      if (!reading.ok) {
        const { at, length, wrong, right } = reading.problem;
        expect(at).toBeGreaterThanOrEqual(0);
        expect(at + length).toBeLessThanOrEqual(text.length);
        expect([wrong, right]).not.toContain("");
        return;
      }
      const { note: kept, isOffLine, ...rest } = reading.seen;
      const head = text.split(/[/／]/)[0] ?? "";
      const words = head
        .toLowerCase()
        .replace(/off\s+line/, "o")
        .replace(/(braking|throttle)\s+/g, "")
        .trim()
        .split(/\s+/);
      const isUnseen = (one: string) => one === "?" || one === "？";
      const told = Object.keys(rest).length + (isOffLine ? 1 : 0) + words.filter(isUnseen).length;
      expect(told).toBe(words.filter((one) => one !== "").length);
      expect(kept ?? "").toBe(
        text
          .slice(head.length + 1)
          .replace(
            /^[\s\p{Cc}\p{Default_Ignorable_Code_Point}]+|[\s\p{Cc}\p{Default_Ignorable_Code_Point}]+$/gu,
            "",
          ),
      );
    }),
    { numRuns: 1000 },
  );
});
