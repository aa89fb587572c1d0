import { describe, expect, it } from "vitest";
import { parsePaste } from "#entry";
import { aContext } from "./aContext.ts";

const paste = (text: string, changes = {}) => parsePaste(text, aContext(changes)).lines;
const times = (text: string, changes = {}) =>
  paste(text, changes).map(({ reading }) => (reading.ok ? (reading.lap.ms ?? "no time") : "refused"));

describe("pasted lines", () => {
  it("are one lap each, whatever ends a line, with the numbers of the lines as pasted", () => {
    const lines = paste("1:23.4\r\n1:23.5\r\r1:23.6\n\n \t \u2028f@3\u2029nonsense\n");
    expect(lines.map(({ lineNumber }) => lineNumber)).toEqual([1, 2, 4, 7, 8]);
    expect(lines.map(({ text }) => text)).toEqual(["1:23.4", "1:23.5", "1:23.6", "f@3", "nonsense"]);
    expect(lines.map(({ reading }) => reading.ok)).toEqual([true, true, true, true, false]);
  });

  it("are read in order, each knowing the ones before", () => {
    expect(times("1:40.0\n+0.6\n-0.1\nf\n+0.5\n1:40.2")).toEqual([
      100_000,
      100_600,
      100_500,
      "no time",
      "refused",
      100_200,
    ]);
  });

  it("complete short forms from the laps pasted before, when nothing else is known", () => {
    const nothing = { usualMs: undefined, pbMs: undefined, previousMs: undefined, paceTimes: [] };
    expect(times("4912\n1:44.100\n4912\n44912\n1:44.2\n5300", nothing)).toEqual([
      "refused",
      104_100,
      "refused",
      104_912,
      104_200,
      105_300,
    ]);
  });

  it("do not move the usual by laps with a remark or by runs that are no pace runs", () => {
    const young = { paceTimes: [83_456, 83_500, 83_600] };
    expect(times("1:44.100 f\n1:44.100 f\n1:44.100 f\n1:44.100 f\n24912", young).at(-1)).toBe(84_912);
    expect(times("1:31.000\n1:31.000\n1:31.000\n1:31.000\n1912", young).at(-1)).toBe(91_912);
    expect(times("1:44.100 f\n1:44.100 f\n1:44.100 f\n1:44.100 f\n4912", young).at(-1)).toBe(84_912);
    expect(times("1:44.100\n1:44.100\n1:44.100\n4912", { isPaceRun: false })).toEqual([
      104_100, 104_100, 104_100, 84_912,
    ]);
  });

  it("may have a counter before a time in full or before sectors, and before nothing else", () => {
    expect(times("3. 1:23.456\n4) 83.500\n5\t1:23.6\n6.\t1:23.7")).toEqual([83_456, 83_500, 83_600, 83_700]);
    expect(times("3\t27.1\t31.4\t24.9", { sectors: 3 })).toEqual([83_400]);
    expect(times("3. 24.9\n3) 4912\n3 1:23.456")).toEqual(["refused", "refused", "refused"]);
  });

  it("have their sectors between tabs, and a note with its tabs", () => {
    const [line] = paste("1:23.4\t27.1\t31.4\t24.9 / a\tb", { sectors: 3 });
    expect(line?.reading).toMatchObject({ lap: { sectors: [27_100, 31_400, 24_900], note: "a\tb" } });
  });

  it("keep the place of a problem behind a counter", () => {
    const [line] = paste("3. 1:75.0");
    expect(line?.reading.ok).toBe(false);
  });

  it("ask for no PB twice: the running PB is the one to beat", () => {
    const asks = paste("2400\n2450").map(({ reading }) => (reading.ok ? reading.asks.length : -1));
    expect(asks).toEqual([1, 0]);
  });

  it("measure no later line from a copied lap that stood there as no PB", () => {
    const fromPb = { relativeTo: "pb", pbMs: 83_118, isPractice: true };
    expect(times("1\t1:22.900\t−0.218\tnot a PB\n+0.5", fromPb)).toEqual([82_900, 83_618]);
    expect(times("1\t1:22.900\t−0.218\tPB\n+0.5", fromPb)).toEqual([82_900, 83_400]);
  });

  it("may be ten thousand, and a line of 1 MB is refused", () => {
    const forms = ["1:23.4", "3912", "24.1", "+0.3", "-0.3", "1:52.0 f@3 / wide", "x", "", "1:40.0", "84100"];
    const text = Array.from({ length: 10_000 }, (_, index) => forms[index % forms.length]).join("\r\n");
    expect(paste(text)).toHaveLength(9_000);
    for (const huge of ["9".repeat(1_000_000), " ".repeat(1_000_000), `1:23.4 / ${"x".repeat(1_000_000)}`])
      expect(times(huge).every((time) => time === "refused")).toBe(true);
  });
});
