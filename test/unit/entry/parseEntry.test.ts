import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { remarkKinds } from "#domain";
import { type EntryContext, nothingTyped, parseEntry, questionOf } from "#entry";
import { aContext } from "./aContext.ts";

function lapOf(text: string, changes: Partial<EntryContext> = {}) {
  const reading = parseEntry(text, aContext(changes));
  if (!reading.ok) throw new Error(`${text}: ${reading.problem.wrong}`);
  return reading.lap;
}

function refusal(text: string, changes: Partial<EntryContext> = {}) {
  const reading = parseEntry(text, aContext(changes));
  if (reading.ok) throw new Error(`${text} was read`);
  return reading.problem;
}

function whys(text: string, changes: Partial<EntryContext> = {}) {
  const reading = parseEntry(text, aContext(changes));
  return reading.ok ? reading.asks.map(({ why }) => why) : ["refused"];
}

describe("remarks and notes", () => {
  it.each([
    ["1:44.9 fs", ["off", "spin"]],
    ["1:44.9fs", ["off", "spin"]],
    ["1:44.9 f s", ["off", "spin"]],
    ["34912F", ["off"]],
    ["1:44.9 oicfsktz", ["out", "in", "cut", "off", "spin", "contact", "traffic", "slow"]],
  ])("%s", (text, kinds) => expect(lapOf(text).remarks.map(({ kind }) => kind)).toEqual(kinds));

  it("names corners, each remark its own", () => {
    expect(lapOf("1:44.9 f@5").remarks).toEqual([{ kind: "off", corner: 5 }]);
    expect(lapOf("1:44.9c@3t").remarks).toEqual([{ kind: "cut", corner: 3 }, { kind: "traffic" }]);
    expect(lapOf("1:44.9 f@5f@12").remarks).toHaveLength(2);
  });

  it("is a lap without a time when remarks stand alone", () => {
    expect(parseEntry("k@7 / into the wall", aContext())).toEqual({
      ok: true,
      lap: { remarks: [{ kind: "contact", corner: 7 }], note: "into the wall" },
      form: "no time",
      asks: [],
    });
  });

  it("keeps a note as typed, behind the first stroke", () => {
    expect(lapOf("1:23.9 /  tow / 2 cars 👩‍🚀 ½ \ud800 ").note).toBe("tow / 2 cars 👩‍🚀 ½ \ud800");
    expect(lapOf("1:23.9/tow").note).toBe("tow");
    expect(lapOf("1:23.9 /  ")).not.toHaveProperty("note");
  });

  it("counts characters, not code units, of a note that is too long", () => {
    expect(lapOf(`1:23.9 / ${"😀".repeat(2000)}`).note).toHaveLength(4000);
    expect(refusal(`1:23.9 / ${"😀".repeat(2001)}`).wrong).toContain("2001 characters");
  });

  it.each([
    ["/ good tow", 0, /needs a lap before it/],
    ["1:23.9 x", 7, /“x” is not a remark/],
    ["1:23.9 ff", 8, /there twice/],
    ["1:23.9 f@", 8, /number of the corner is missing/],
    ["1:23.9 f@13", 9, /12 corners/],
    ["1:23.9 f@0", 9, /no corner 0/],
    ["1:23.9 f13", 8, /12 corners/],
    ["1:23.9 off@13", 11, /12 corners/],
    ["f112", 1, /after @/],
    ["off 5", 4, /after @/],
    ["1:23.9 off f", 11, /there twice/],
    ["f 1:23.9", 2, /times come first/],
    ["1:23.9 @5", 7, /needs a remark/],
  ])("%s is refused at %i", (text, at, wrong) => {
    expect(refusal(text).at).toBe(at);
    expect(refusal(text).wrong).toMatch(wrong);
  });

  it.each([
    ["1:24.300 f5", "off", 5],
    ["1:24.300f5", "off", 5],
    ["s12", "spin", 12],
    ["1:24.300 off", "off", undefined],
    ["1:24.300off5", "off", 5],
    ["1:24.300 SPIN@4", "spin", 4],
    ["24300 in", "in", undefined],
    ["out", "out", undefined],
    ["out@2", "out", 2],
    ["cut3", "cut", 3],
    ["4300 contact", "contact", undefined],
    ["1:24.3 traffic / tow", "traffic", undefined],
    ["slow", "slow", undefined],
    ["slow zone@7", "slow", 7],
    ["1:24.3 slowzone", "slow", undefined],
    ["1:24.3 in lap", "in", undefined],
  ])("%s is %s at corner %s", (text, kind, corner) => {
    // With the tens of seconds where the remark wants them.
    const lap = lapOf(text.replace(/^4300/, "24300"));
    expect(lap.remarks).toEqual([corner === undefined ? { kind } : { kind, corner }]);
  });

  it("reads remarks the same as letters, with @ or without, and as words", () => {
    const remark = fc.record({
      about: fc.constantFrom(...remarkKinds),
      corner: fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }),
      how: fc.constantFrom("letter", "word", "first word"),
      sign: fc.constantFrom("@", ""),
    });
    const several = fc.uniqueArray(remark, {
      minLength: 1,
      maxLength: 4,
      selector: ({ about, corner }) => `${about.kind} ${corner}`,
    });
    fc.assert(
      fc.property(several, fc.boolean(), (all, isUpper) => {
        const written = all.map(({ about, corner, how, sign }) => {
          const word =
            how === "letter" ? about.letter : how === "word" ? about.word : about.word.split(" ")[0];
          return corner === undefined ? word : `${word}${sign}${corner}`;
        });
        const line = `1:44.912 ${written.join(" ")}`;
        expect(lapOf(isUpper ? line.toUpperCase() : line).remarks).toEqual(
          all.map(({ about: { kind }, corner }) => (corner === undefined ? { kind } : { kind, corner })),
        );
      }),
      { seed: 34, numRuns: 2_000 },
    );
  });

  it("takes letters and words together, each with its corner", () => {
    expect(lapOf("1:44.9 f5s3 cut").remarks).toEqual([
      { kind: "off", corner: 5 },
      { kind: "spin", corner: 3 },
      { kind: "cut" },
    ]);
    expect(lapOf("1:44.9 k in").remarks).toEqual([{ kind: "contact" }, { kind: "in" }]);
  });

  it("says to put a corner after @ what it would take", () => {
    expect(refusal("f112").right).toBe("Write f@112 for corner 112.");
    expect(refusal("1:23.9 off 5").right).toBe("Write off@5 for corner 5.");
    expect(lapOf("1:23.9 off@5").remarks).toEqual([{ kind: "off", corner: 5 }]);
  });

  it("asks whether an out lap at a corner is an off, and not of the word", () => {
    const asked = (text: string) => {
      const reading = parseEntry(text, aContext());
      return reading.ok ? questionOf(reading) : undefined;
    };
    const question = "“o” is read as an out lap. Enter again if it is right, or write f for off.";
    for (const text of ["1:24.3 o5", "1:24.3 o@5", "o5", "1:24.3 co3"])
      expect(asked(text), text).toBe(question);
    for (const text of ["1:24.3 o", "1:24.3 out5", "1:24.3 f5", "1:24.3 of5"])
      expect(asked(text), text).toBeUndefined();
  });

  it.each([
    ["1:24:300", "Write 1:24.300, with a point before the part of a second."],
    ["1:24:3", "Write 1:24.3, with a point before the part of a second."],
    ["1 24 300", "Write 1:24.300."],
    ["1 24.300", "Write 1:24.300."],
    ["1 24,3", "Write 1:24.3."],
    ["24 300", "Write 24.300."],
  ])("%s is answered with the time that was meant", (text, right) => {
    expect(refusal(text).right).toBe(right);
  });

  it("has one problem of its own for an empty line", () => {
    for (const text of ["", "  ", "\u200b"]) expect(refusal(text)).toBe(nothingTyped);
  });
});

describe("what a signed entry is measured from", () => {
  it("is the lap before, the PB or the target, as chosen", () => {
    expect(lapOf("+0.6").ms).toBe(84_300);
    expect(lapOf("+0.6", { relativeTo: "pb" }).ms).toBe(83_600);
    expect(lapOf("+0.6", { relativeTo: "target", targetMs: 82_000 }).ms).toBe(82_600);
  });

  it("is refused after a lap without a time, without a PB, without a target", () => {
    expect(refusal("+0.6", { previousMs: undefined }).wrong).toMatch(/no time before/);
    expect(refusal("+0.6", { relativeTo: "pb", pbMs: undefined }).wrong).toMatch(/no PB/);
    expect(refusal("+0.6", { relativeTo: "target" }).wrong).toMatch(/no target/);
  });

  it("takes an s behind it for a spin", () => {
    expect(lapOf("+20.6 s").remarks).toEqual([{ kind: "spin" }]);
  });
});

describe("short forms in a session", () => {
  it.each(["f", "s", "k", "o", "i", "ct f"])("wants the tens of seconds with %s", (remarks) => {
    expect(refusal(`4912 ${remarks}`).wrong).toMatch(/tens of seconds/);
    expect(lapOf(`24912 ${remarks}`).ms).toBe(84_912);
  });

  it.each(["", "c", "t", "z", "c@3 t"])("completes the digits with “%s” as usual", (remarks) => {
    expect(lapOf(`4912 ${remarks}`).ms).toBe(84_912);
    expect(refusal(`8912 ${remarks}`).choices).toEqual(["1:18.912", "1:28.912"]);
  });

  it("says which laps a mistake may have been, the first not faster than a lap like the others", () => {
    expect(refusal("4912 f").choices).toEqual(["1:24.912", "1:34.912", "1:44.912"]);
    expect(refusal("0500 s").choices).toEqual(["1:20.500", "1:30.500", "1:40.500"]);
    expect(refusal("0400 s").choices).toEqual(["1:30.400", "1:40.400", "1:50.400"]);
  });

  it("wants the tens while one or two laps alone say what is usual, unless an older PB bears them out", () => {
    const slowFirst = { usualMs: 94_100, paceTimes: [94_100], pbMs: 94_100 };
    expect(refusal("4912", slowFirst).wrong).toMatch(/until three clean laps/);
    expect(lapOf("24912", slowFirst).ms).toBe(84_912);
    expect(refusal("4912", slowFirst).choices).toEqual(["1:24.912", "1:34.912"]);
    expect(refusal("4912", { ...slowFirst, pbMs: 83_000 }).wrong).toMatch(/until three clean laps/);
    expect(lapOf("4912", { usualMs: 84_100, paceTimes: [84_100], pbMs: 83_000 }).ms).toBe(84_912);
    expect(lapOf("4912", { usualMs: 83_400, paceTimes: [], pbMs: 83_400 }).ms).toBe(84_912);
    expect(lapOf("4912", { usualMs: 83_400, paceTimes: [83_400, 83_400, 94_100], pbMs: 83_400 }).ms).toBe(
      84_912,
    );
  });
});

describe("three digits alone", () => {
  const advice = (text: string, changes: Partial<EntryContext> = {}) => refusal(text, changes).right;

  it("are answered with times that fit what is usual here", () => {
    expect(advice("541")).toBe(
      "Type the seconds' last digit too, such as 3541, or the whole time, such as 1:23.541.",
    );
    expect(advice("541", { usualMs: 55_600 })).toMatch(/such as 5541, .* such as 55\.541\.$/);
    expect(advice("541", { usualMs: undefined })).toMatch(/such as 4541, .* such as 1:24\.541\.$/);
    expect(advice("541", { usualMs: 55_600, displayDecimals: 2 })).toMatch(
      /such as 5\.41, .* such as 55\.41\.$/,
    );
    expect(advice("54", { usualMs: 55_600 })).toMatch(/such as 54\.0, .* such as 55\.600\.$/);
  });
});

describe("a second Enter", () => {
  it("is asked for far under the PB", () => {
    expect(whys("1:21.0")).toEqual(["far under PB"]);
    expect(whys("1:22.0")).toEqual([]);
    expect(whys("1:21.0 c")).toEqual([]);
    expect(whys("1:21.0", { isPractice: false })).toEqual([]);
  });

  it("is asked for when a short form beats the PB by more than 0.5 %, or makes the first one", () => {
    expect(whys("2500")).toEqual(["short form PB"]);
    expect(whys("1:22.500")).toEqual([]);
    expect(whys("2590")).toEqual([]);
    expect(whys("4912", { pbMs: undefined })).toEqual(["short form PB"]);
    expect(whys("22.5")).toEqual(["short form PB"]);
    expect(whys("23.0")).toEqual([]);
    expect(whys("3000")).toEqual([]);
  });

  it("is not asked for on a good evening of short-form PBs by hundredths", () => {
    let pbMs = 83_000;
    for (const digits of ["2970", "2930", "2890", "2850"]) {
      expect(whys(digits, { pbMs })).toEqual([]);
      pbMs = 80_000 + Number(digits);
    }
  });

  it("is asked for when a short form makes a PB and another time ending so is nearly as near", () => {
    expect(whys("2950", { usualMs: 85_600 })).toEqual(["short form PB"]);
    expect(whys("2950", { usualMs: 85_400 })).toEqual([]);
  });

  it("is not asked for where a lap under a minute was typed whole, because nothing was completed", () => {
    const short = { usualMs: 55_600, pbMs: 55_300, paceTimes: [55_500, 55_600, 55_700], previousMs: 55_700 };
    expect(whys("55.200", short)).toEqual([]);
    expect(whys("55,2", short)).toEqual([]);
    expect(whys("55200", short)).toEqual([]);
    expect(whys("5000", short)).toEqual(["short form PB"]);
    expect(whys("5.0", short)).toEqual(["short form PB"]);
  });

  it("is asked for beyond the usual without a remark", () => {
    expect(whys("1:35.0")).toEqual(["far over usual"]);
    expect(whys("1:35.0 f")).toEqual([]);
    expect(whys("1:31.0")).toEqual([]);
    expect(whys("1:35.0", { paceTimes: [83_000, 83_100, 83_200, 83_300] })).toEqual([]);
    expect(whys("1:35.0", { paceTimes: [70_000, 75_000, 83_000, 90_000, 99_000] })).toEqual([]);
  });

  it("is asked for when the first lap may lack its minute", () => {
    const first = { usualMs: undefined, pbMs: undefined, paceTimes: [] };
    expect(whys("24.9", first)).toEqual(["minute left out"]);
    expect(whys("0:24.9", first)).toEqual([]);
    expect(whys("83.4", first)).toEqual([]);
  });

  it("says why in a plain sentence", () => {
    const reading = parseEntry("1:21.0", aContext());
    expect(reading.ok && questionOf(reading)).toBe(
      "1:21.0 would beat your PB, 1:23.000, by 2.4 %. Enter again if it is right.",
    );
  });
});

describe("a count typed as a lap", () => {
  it.each(["7 of 10", " 7of10 "])("is shown the way to its own field in a drill: %s", (text) => {
    const { wrong, right } = refusal(text, { isCounted: true });
    expect(wrong).toBe(`“${text.trim()}” is a count, and no lap time.`);
    expect(right).toBe("Type it in the plan above, beside “Count”; on a phone that is under “Line”.");
  });

  it("is refused as any other text where nothing is counted, and no lap of a drill is taken for one", () => {
    expect(refusal("7 of 10").wrong).not.toContain("count");
    expect(refusal("1:75", { isCounted: true }).wrong).not.toContain("count");
    expect(lapOf("1:44.9 / 10", { isCounted: true })).toMatchObject({ ms: 104_900, note: "10" });
  });
});
