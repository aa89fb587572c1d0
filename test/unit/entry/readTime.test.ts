import { describe, expect, it } from "vitest";
import { readTime } from "#entry";

const near = { nearMs: 83_456, previousMs: 83_000 };

function refusal(text: string, context: Parameters<typeof readTime>[1] = near) {
  const reading = readTime(text, context);
  if (reading.ok) throw new Error(`${text} was read as ${reading.ms}`);
  return reading.problem;
}

describe("a time in full", () => {
  it.each([
    ["1:23.456", 83_456, 3],
    ["83.456", 83_456, 3],
    ["1.23.456", 83_456, 3],
    ["1:23,456", 83_456, 3],
    ["1'23\"456", 83_456, 3],
    ["1'23.45", 83_450, 2],
    ["1'23\"", 83_000, 0],
    ["1:02:03.4", 3_723_400, 1],
    ["1:24", 84_000, 0],
    ["01:23.456", 83_456, 3],
    ["0:59.1", 59_100, 1],
    ["24:00:00.000", 86_400_000, 3],
    ["  1:23.456\t", 83_456, 3],
  ])("reads %s and remembers its decimals", (text, ms, decimals) => {
    expect(readTime(text)).toEqual({ ok: true, ms, decimals, form: "full" });
  });

  it("takes seconds as they stand when there is no usual lap to complete them from", () => {
    expect(readTime("59.120")).toMatchObject({ ms: 59_120, decimals: 3, form: "full" });
    expect(readTime("0.100")).toMatchObject({ ms: 100 });
  });
});

describe("digits only", () => {
  it.each([
    ["123456", 3, 83_456],
    ["059120", 3, 59_120],
    ["1023456", 3, 623_456],
    ["10203400", 3, 3_723_400],
    ["12345", 2, 83_450],
    ["1234", 1, 83_400],
  ] as const)("%s with %i decimals shown", (text, displayDecimals, ms) => {
    expect(readTime(text, { displayDecimals })).toEqual({
      ok: true,
      ms,
      decimals: displayDecimals,
      form: "digits",
    });
  });

  it("refuses three digits and fewer, whatever the simulator shows", () => {
    for (const displayDecimals of [1, 2, 3])
      for (const text of ["4", "49", "491"])
        expect(refusal(text, { ...near, displayDecimals }).wrong).toMatch(/not clear/);
  });

  it("refuses seconds over 59 with both ways to write them", () => {
    expect(refusal("83456").right).toBe("Write 83.456 or 1:23.456 if you mean 83 seconds.");
    expect(refusal("175000")).toMatchObject({ at: 1, length: 2 });
  });
});

describe("the short form", () => {
  it.each([
    ["4912", 84_912],
    ["24912", 84_912],
    ["24.9", 84_900],
    ["4.9", 84_900],
    ["2912", 82_912],
    ["59912", 119_912, 118_000],
    ["9912", 59_912, 58_000],
    ["1200", 121_200, 119_500],
    ["01200", 121_200, 119_500],
  ])("%s is completed to the usual lap: %i", (text, ms, nearMs = 83_456) => {
    expect(readTime(text, { nearMs })).toMatchObject({ ok: true, ms, form: "short" });
  });

  it.each([
    ["59912", "digits"],
    ["59.912", "full"],
    ["59,9", "full"],
  ])("%s is a whole time where laps are under a minute", (text, form) => {
    expect(readTime(text, { nearMs: 55_000 })).toMatchObject({ ok: true, form });
  });

  it("takes both digits of the seconds and two decimals where two are shown", () => {
    expect(readTime("2491", { ...near, displayDecimals: 2 })).toMatchObject({ ms: 84_910, decimals: 2 });
  });

  it("names the candidates when the nearest is over 3 s of ten, or over 20 s of a minute, away", () => {
    expect(refusal("9912").wrong).toContain("1:19.912 or 1:29.912");
    expect(refusal("59.1").right).toBe("Write 0:59.1 or 1:59.1.");
    expect(readTime("6456", near)).toMatchObject({ ms: 86_456 });
    expect(refusal("6457").right).toContain("1:26.457");
    expect(readTime("43456", near)).toMatchObject({ ms: 103_456 });
    expect(refusal("43457").right).toContain("1:43.457");
  });

  it("wants the tens of seconds with a remark, and no lap a minute too fast", () => {
    const spoiled = { ...near, mustTypeTens: true };
    expect(refusal("4912", spoiled).right).toContain("1:24.912");
    expect(refusal("4.9", spoiled).wrong).toMatch(/tens/);
    expect(readTime("34912", spoiled)).toMatchObject({ ms: 94_912 });
    expect(refusal("09912", spoiled).right).toBe("Write 1:09.912 or 2:09.912.");
  });

  it("is refused with the whole time named when nothing is known to complete it from", () => {
    expect(refusal("4912", {}).right).toBe("Write the whole time, such as 1:24.912.");
    expect(refusal("24912", {}).right).toBe("Write the whole time, such as 1:24.912.");
  });

  it("never makes a lap of no time", () => expect(readTime("0000", { nearMs: 1000 }).ok).toBe(false));
});

describe("a difference to the lap before", () => {
  it.each([
    ["+0.6", 83_600, 1],
    ["-0.25", 82_750, 2],
    ["−0,250", 82_750, 3],
    ["+2", 85_000, 0],
  ])("%s", (text, ms, decimals) => {
    expect(readTime(text, near)).toEqual({ ok: true, ms, decimals, form: "relative" });
  });

  it("is known to the fewer decimals of the two", () => {
    expect(readTime("+0.612", { ...near, previousDecimals: 1 })).toMatchObject({ decimals: 1 });
  });

  it("is refused without a time before, and when nothing is left", () => {
    expect(refusal("+0.6", {}).wrong).toMatch(/no time before/);
    expect(refusal("-83.0").wrong).toMatch(/no time/);
    expect(refusal("-90").wrong).toMatch(/no time/);
    expect(refusal("+312").right).toContain("+0.312");
  });
});

describe("near misses", () => {
  it.each([
    ["1:75.0", 2, 2, "2:15.0"],
    ["1.75.0", 2, 2, "2:15.0"],
    ["1:60.0", 2, 2, "2:00.0"],
    ["1:2.3", 2, 1, "1:02.3"],
    ["1:60:00.0", 2, 2, "1:59:00.0"],
    ["1:23.4567", 5, 4, "1:23.456"],
    ["24.9123", 3, 4, "24.912"],
    ["1::23", 1, 2, "1:23"],
    [":23", 0, 0, "0:23"],
    ["1:23.", 5, 0, "1:23"],
    ["83.456s", 6, 1, "83.456"],
    ["1:23·4", 4, 1, "1:23.4"],
    ["1:23\u00a0.456", 4, 1, "1:23.456"],
    ["0083.456", 0, 4, "83.456"],
  ])("%s: says where and what would be right", (text, at, length, right) => {
    const problem = refusal(text);
    expect(problem).toMatchObject({ at, length });
    expect(problem.right).toContain(right);
  });

  it.each([
    "",
    " ",
    "\u00a0",
    "0:00.000",
    "0.0",
    "000000",
    "NaN",
    "Infinity",
    "1e5",
    "0x1F",
    "1_000",
    "--5",
    "+",
    "-",
    ".",
    ":",
    "1:23:45:67",
    "1 23",
    "1:23 456",
    "24:00:00.001",
    "99:59:59.999",
    "100:00:00",
    "9999999.0",
    "1234567890",
    "9".repeat(400),
    "½",
    "①",
    "1²",
    "1:23.45６7",
    "+0.6 s",
    "+.6",
    "5.",
    ".5",
    "1:23.4.5",
    "1,23,456",
    "1.23,4",
    "\ud800",
  ])("%j is no time", (text) => {
    const problem = refusal(text);
    expect(problem.wrong).not.toBe("");
    expect(problem.right).not.toBe("");
    expect(problem.at + problem.length).toBeLessThanOrEqual(text.length);
  });
});
