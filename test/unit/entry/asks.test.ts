import { describe, expect, it } from "vitest";
import { asksOfTime, type EntryContext, factsOf, parseEntry, questionOf } from "#entry";
import { aContext } from "./aContext.ts";

/** Nothing is known of the combo. */
const nothing: EntryContext = { relativeTo: "lap", displayDecimals: 3, paceTimes: [], isPractice: true };

function read(text: string, context: EntryContext) {
  const reading = parseEntry(text, context);
  if (!reading.ok) throw new Error(`${text}: ${reading.problem.wrong}`);
  return reading;
}
const factsIn = (text: string, context: EntryContext) => read(text, context).asks.map(({ fact }) => fact);

describe("a time that would beat the PB", () => {
  // 1.5 % of a PB of 1:40 is 1.5 s, 0.5 % half a second.
  const context = aContext({ pbMs: 100_000, usualMs: 100_000, paceTimes: [], previousMs: undefined });

  it("is asked about when by more than 1.5 %, not at it", () => {
    expect(factsIn("1:38.500", context)).toEqual([]);
    expect(factsIn("1:38.499", context)).toEqual(["1:38.499 would beat your PB, 1:40.000, by 1.5 %."]);
  });

  it("is asked about when by more than 0.5 %, not at it, where its digits were completed", () => {
    expect(factsIn("39500", context)).toEqual([]);
    expect(factsIn("39499", context)).toEqual([
      "The digits were completed to 1:39.499, a new PB (before: 1:40.000).",
    ]);
    expect(factsIn("1:39.499", context)).toEqual([]);
  });

  it("does not beat it where it may be level with it, and the PB is named with its own decimals", () => {
    expect(factsIn("39.4", { ...context, pbMs: 99_499 })).toEqual([]);
    expect(factsIn("1:38.0", { ...context, pbDecimals: 1 })).toEqual([
      "1:38.0 would beat your PB, 1:40.0, by 2.0 %.",
    ]);
  });

  it("is the first PB here where there is none, and asked about where its digits were completed", () => {
    const first = { ...context, pbMs: undefined };
    expect(factsIn("39499", first)).toEqual(["The digits were completed to 1:39.499, your first PB here."]);
    expect(factsIn("1:39.499", first)).toEqual([]);
  });

  it("a tenth and more under a usual that is sure it moves nothing, at a tenth and on an unsure one it does", () => {
    const sure = { ...context, paceTimes: [100_000, 100_000, 100_000] };
    const isOddIn = (text: string, known: EntryContext) => read(text, known).asks[0]?.isOdd;
    expect(isOddIn("1:30.000", sure)).toBeUndefined();
    expect(isOddIn("1:29.999", sure)).toBe(true);
    expect(isOddIn("1:29.999", { ...nothing, pbMs: 100_000, paceTimes: [100_000] })).toBeUndefined();
  });

  it("is no practice in a run that takes no PB, and none with a mistake", () => {
    expect(factsIn("1:30.0", { ...context, isPractice: false })).toEqual([]);
    expect(factsIn("1:30.0 f", context)).toEqual([]);
  });
});

describe("what is asked", () => {
  it("a first lap under a minute may lack it, and the time with its minute is shown", () => {
    const reading = read("23.456", nothing);
    expect(factsOf(reading)).toBe("This is read as 23.456 s, under a minute.");
    expect(questionOf(reading)).toBe(
      "This is read as 23.456 s, under a minute. Enter again if it is right, or write 1:23.456 with its minute.",
    );
    expect(asksOfTime({ ms: 23_456, decimals: 3, form: "full" }, nothing)).toEqual([]);
  });

  it("two plain facts share one question, after the last of them", () => {
    expect(questionOf(read("16123", aContext()))).toBe(
      "1:16.123 would beat your PB, 1:23.000, by 8.3 %. The digits were completed to 1:16.123, a new PB (before: 1:23.000). Enter again if it is right.",
    );
    expect(factsOf(read("16123", aContext()))).toBe(
      "1:16.123 would beat your PB, 1:23.000, by 8.3 %. The digits were completed to 1:16.123, a new PB (before: 1:23.000).",
    );
  });

  it("a fact with something else to do keeps its own question", () => {
    expect(questionOf(read("12:23.456 s", aContext()), "pad")).toMatch(
      /^“s” is read as a spin\. Press Add again to keep it; if it means seconds, take it away\. 12:23\.456 is more than 3 times .* Press Add again to keep it\.$/,
    );
  });

  it("nothing is asked of a lap like the others, and of one without a time", () => {
    expect([questionOf(read("1:23.5", aContext())), factsOf(read("1:23.5", aContext()))]).toEqual([
      undefined,
      undefined,
    ]);
    expect(read("f", aContext()).asks).toEqual([]);
  });
});

describe("what a lap is judged by", () => {
  it("a layout's length: from 450 km/h to 30 km/h, spins and standing starts included", () => {
    // 4.5 km take 36 s at 450 km/h and 540 s at 30 km/h.
    const context = { ...nothing, known: { lengthMetres: 4500 } };
    expect(factsIn("0:36.0 f", context)).toEqual([]);
    expect(factsIn("0:35.9 f", context)).toEqual(["35.9 is far shorter than laps of 4,500 m take."]);
    expect(factsIn("9:00.0 f", context)).toEqual([]);
    expect(factsIn("9:00.1 f", context)).toEqual(["9:00.1 is far longer than laps of 4,500 m take."]);
  });

  it("any circuit: from ten seconds to half an hour", () => {
    expect(factsIn("0:10.0 f", nothing)).toEqual([]);
    expect(factsIn("0:09.9 f", nothing)).toEqual(["9.9 is far shorter than laps of any circuit take."]);
    expect(factsIn("30:00.0 f", nothing)).toEqual([]);
    expect(factsIn("30:00.1 f", nothing)).toEqual(["30:00.1 is far longer than laps of any circuit take."]);
  });

  it("other cars on the layout and other combos: from a third of the fastest to three times the slowest", () => {
    for (const [known, name] of [
      [{ layout: [90_000, 60_000, 120_000] }, "your laps here with other cars"],
      [{ elsewhere: [90_000, 60_000, 120_000] }, "your laps elsewhere"],
    ] as const) {
      const context = { ...nothing, known };
      expect(factsIn("0:20.0 f", context)).toEqual([]);
      expect(factsIn("0:19.9 f", context)).toEqual([`19.9 is under a third of ${name}, 1:00.0.`]);
      expect(factsIn("6:00.0 f", context)).toEqual([]);
      expect(factsIn("6:00.1 f", context)).toEqual([`6:00.1 is more than 3 times ${name}, 2:00.0.`]);
    }
  });

  it("the run's own laps from five on, where the session has more", () => {
    const five = [100_000, 100_000, 100_000, 100_000, 100_000];
    const session = [...five, 60_000, 60_000, 60_000, 60_000, 60_000, 60_000, 60_000];
    const named = (runTimes: number[], paceTimes: number[]) =>
      factsIn("5:30.0 f", { ...nothing, runTimes, paceTimes })[0];
    expect(named(five, session)).toBe("5:30.0 is more than 3 times this run's usual lap, 1:40.0.");
    expect(named(five.slice(1), session)).toBe(
      "5:30.0 is more than 3 times this session's usual lap, 1:00.0.",
    );
    expect(named(five, five)).toBe("5:30.0 is more than 3 times this session's usual lap, 1:40.0.");
  });
});
