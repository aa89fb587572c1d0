import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  asksOfTime,
  type EntryContext,
  factsOf,
  isOdd,
  type Known,
  parseEntry,
  parsePaste,
  questionOf,
} from "#entry";
import { aContext } from "./aContext.ts";

/** Nothing is known of the combo. */
const nothing: EntryContext = {
  relativeTo: "lap",
  displayDecimals: 3,
  paceTimes: [],
  isPractice: true,
};
const pb = { pbMs: 83_118, pbDecimals: 3, usualMs: 83_118 };

function read(text: string, context: EntryContext) {
  const reading = parseEntry(text, context);
  if (!reading.ok) throw new Error(`${text}: ${reading.problem.wrong}`);
  return reading;
}
const whys = (text: string, context: EntryContext) => read(text, context).asks.map(({ why }) => why);
const facts = (text: string, context: EntryContext) => read(text, context).asks.map(({ fact }) => fact);

const absurd = ["200:00.0", "13:23.456", "23:59:59", "2:50.0", "1:24:00.0"];
const fewLaps = [[], [83_900], [83_900, 84_100], [83_900, 84_100, 84_000], [83_900, 84_100, 84_000, 83_700]];

describe("an absurd lap", () => {
  it.each(absurd)("of %s is asked about from the first lap of a session on", (text) => {
    for (const paceTimes of fewLaps) {
      expect(whys(text, { ...nothing, ...pb, paceTimes }), `${paceTimes.length} laps`).toHaveLength(1);
      expect(isOdd(read(text, { ...nothing, ...pb, paceTimes }))).toBe(true);
    }
  });

  it("is asked about with a remark beyond 3 times the usual or under a third, not before", () => {
    for (const remark of ["f", "o", "t", "ok"]) {
      const of = (time: string) => whys(`${time} ${remark}`, aContext());
      expect(of("2:50.0")).toEqual([]);
      expect(of("4:10.0")).toEqual([]);
      expect(of("4:11.0")).toEqual(["far from usual"]);
      expect(of("0:28.0")).toEqual([]);
      expect(of("0:27.0")).toEqual(["far from usual"]);
    }
  });

  it("of a first lap ever is asked about where no circuit takes so long, or so short", () => {
    expect(whys("200:00.0", nothing)).toEqual(["far from usual"]);
    expect(whys("0:08.0", nothing)).toEqual(["far from usual"]);
    for (const text of ["1:23.456", "0:18.2", "11:40.0"]) expect(whys(text, nothing), text).toEqual([]);
  });
});

describe("what a lap is judged by", () => {
  const known: Required<Known> = {
    page: [100_000],
    here: [200_000],
    layout: [400_000],
    lengthMetres: 50_000,
    elsewhere: [1_000_000],
  };
  const full = {
    ...nothing,
    paceTimes: [60_000, 60_000, 60_000, 60_000, 60_000, 60_000],
    runTimes: [30_000, 30_000, 30_000, 30_000, 30_000],
    pbMs: 150_000,
    known,
  };

  it("is the nearest there is: run, session, page, PB, other laps, other cars, length, other combos, any circuit", () => {
    const steps: readonly [Partial<EntryContext>, string][] = [
      [{}, "this run's usual lap, 30.0"],
      [{ runTimes: [] }, "this session's usual lap, 1:00.0"],
      [{ paceTimes: [] }, "your usual lap here, 1:40.0"],
      [{ known: { ...known, page: [] } }, "your PB, 2:30.0"],
      [{ pbMs: undefined }, "your other laps here, 3:20.0"],
      [{ known: { ...known, page: [], here: [] } }, "your laps here with other cars, 6:40.0"],
      [{ known: { lengthMetres: 50_000, elsewhere: [1_000_000] } }, "laps of 50,000 m take"],
      [{ known: { elsewhere: [1_000_000] } }, "your laps elsewhere, 16:40.0"],
      [{ known: {} }, "laps of any circuit take"],
    ];
    let context: EntryContext = full;
    for (const [change, said] of steps) {
      context = { ...context, ...change };
      expect(facts("20:00:00.0 f", context)[0], said).toContain(said);
    }
  });

  it("is strict for laps of the same surface and kind, and wide for all that is farther away", () => {
    const own = { ...nothing, known: { page: [83_000, 83_200, 83_300, 83_500, 83_900] } };
    expect(whys("1:33.0", own)).toEqual(["far over usual"]);
    expect(whys("1:31.0", own)).toEqual([]);
    const wet = { ...nothing, ...pb, isDry: false, known: { here: own.known.page } };
    expect(whys("1:52.0", wet)).toEqual([]);
    expect(whys("4:12.0", wet)).toEqual(["far from usual"]);
    const drill = { ...own, isPaceRun: false, likeTimes: [120_000], known: { here: own.known.page } };
    expect(whys("2:40.0", drill)).toEqual([]);
    expect(whys("13:23.456", drill)).toEqual(["far from usual"]);
    const firstDrill = { ...nothing, isPaceRun: false, likeTimes: [100_000] };
    expect(whys("13:23.456", firstDrill)).toEqual(["far from usual"]);
  });

  it("lets the first lap of a race be slow by its nature", () => {
    const race = { ...nothing, isPaceRun: false, likeTimes: [83_000, 83_100, 83_200, 83_300, 83_400] };
    expect(whys("1:39.0", race)).toEqual(["far over usual"]);
    expect(whys("1:39.0", { ...race, isSlow: true })).toEqual([]);
  });

  it("is the faster of two laps: any lap may take longer than it should", () => {
    const first = { ...nothing, usualMs: 300_000, paceTimes: [300_000] };
    expect(whys("1:23.456", first)).toEqual(["far from usual"]);
    expect(isOdd(read("1:23.456", first))).toBe(false);
    expect(whys("1:24.0", { ...nothing, usualMs: 191_728, paceTimes: [83_456, 300_000] })).toEqual([]);
  });

  it("of an uneven driver is left alone up to six times the scatter, of an even one up to a tenth", () => {
    // The median is 1:30, the median distance from it 2 s, so the scatter 1.4826 · 2 s = 2.965 s; six of it, 17.79 s.
    const uneven = { ...nothing, paceTimes: [86_000, 88_000, 90_000, 92_000, 94_000] };
    expect(whys("1:47.7", uneven)).toEqual([]);
    expect(whys("1:47.8", uneven)).toEqual(["far over usual"]);
    const even = { ...nothing, paceTimes: [89_800, 89_900, 90_000, 90_100, 90_200] };
    expect(whys("1:38.9", even)).toEqual([]);
    expect(whys("1:39.1", even)).toEqual(["far over usual"]);
  });

  it("allows a quarter where under five laps are known, however alike they are", () => {
    const four = { ...nothing, paceTimes: [90_000, 90_000, 90_000, 90_000] };
    expect(whys("1:52.4", four)).toEqual([]);
    expect(whys("1:52.6", four)).toEqual(["far over usual"]);
  });

  it("is either of two laps far apart, for a slip confirmed in haste is no measure of the good laps after it", () => {
    const good = ["1:23.912", "1:24.123", "1:23.745", "1:23.601"];
    for (const slip of ["1:03.456", "0:20.456", "0:29.9"]) {
      const { lines } = parsePaste(["1:23.456", slip, ...good].join("\n"), nothing);
      const after = lines.slice(2).map(({ reading }) => (reading.ok ? [reading.lap.ms, reading.asks] : []));
      expect(after, slip).toEqual([83_912, 84_123, 83_745, 83_601].map((ms) => [ms, []]));
    }
  });

  it("still asks about a third lap that is near neither of two far apart", () => {
    const two = { ...nothing, usualMs: 191_728, paceTimes: [83_456, 300_000] };
    expect(whys("2:50.0", two)).toEqual(["far over usual"]);
    expect(whys("0:20.0", two)).toContain("far from usual");
    expect(whys("1:47.0", { ...nothing, paceTimes: [83_456, 100_000] })).toEqual(["far over usual"]);
  });

  it("says what it was judged by in a plain sentence", () => {
    expect(questionOf(read("2:50.0", { ...nothing, ...pb }))).toBe(
      "2:50.0 is 104.5 % over your PB, 1:23.1, and has no remark. Enter again if it is right.",
    );
    expect(facts("200:00.0", { ...nothing, ...pb })).toEqual([
      "3:20:00.0 is more than 3 times your PB, 1:23.1.",
    ]);
    expect(facts("13:23.456", { ...nothing, known: { lengthMetres: 5_000 } })).toEqual([
      "13:23.456 is far longer than laps of 5,000 m take.",
    ]);
  });
});

describe("a line with two things the matter", () => {
  it("has both said at once, and what to do about it", () => {
    const reading = read("12:23.456 s", aContext());
    expect(reading.asks.map(({ why }) => why)).toEqual(["unit or spin", "far from usual"]);
    for (const { fact } of reading.asks) expect(factsOf(reading)).toContain(fact);
    expect(questionOf(reading)).toMatch(
      /read as a spin.* 12:23\.456 is more than 3 times .*Enter again if it is right\.$/,
    );
    expect(questionOf(read("1:23.456", aContext()))).toBeUndefined();
  });

  it("is told by the key where there are keys, and by the pad's button where there is a pad", () => {
    const spin = read("1:23.456 s", aContext());
    expect(questionOf(spin)).toBe(
      "“s” is read as a spin. Enter again if it is right; if it means seconds, take it away.",
    );
    expect(questionOf(spin, "pad")).toBe(
      "“s” is read as a spin. Press Add again to keep it; if it means seconds, take it away.",
    );
    const sectors = read("17.1 20.42 17.9", nothing);
    expect(questionOf(sectors, "pad")).toMatch(
      / Press Add again if this layout has 3 sectors; laps go one a line\.$/,
    );
  });
});

describe("the best and the usual of a whole run", () => {
  it("are judged like laps", () => {
    const time = { ms: 803_456, decimals: 3, form: "full" } as const;
    expect(asksOfTime(time, aContext()).map(({ why }) => why)).toEqual(["far from usual"]);
    expect(asksOfTime({ ...time, ms: 83_300 }, aContext())).toEqual([]);
    expect(asksOfTime({ ...time, ms: 70_000 }, aContext()).map(({ why }) => why)).toEqual(["far under PB"]);
  });
});

describe("whatever is known", () => {
  const lapMs = fc.integer({ min: 40_000, max: 400_000 });
  const around = lapMs.chain((usual) => {
    const near = fc.integer({ min: Math.round(usual * 0.98), max: Math.round(usual * 1.02) });
    const times = fc.array(near, { maxLength: 12 });
    return fc.record({
      usual: fc.constant(usual),
      paceTimes: times,
      runTimes: times,
      pbMs: fc.option(near, { nil: undefined }),
      page: times,
      here: times,
      layout: times,
      elsewhere: times,
      isDry: fc.boolean(),
      isPaceRun: fc.boolean(),
    });
  });
  const contextOf = ({
    usual: _,
    page,
    here,
    layout,
    elsewhere,
    ...rest
  }: typeof around extends fc.Arbitrary<infer T> ? T : never): EntryContext => ({
    ...nothing,
    ...rest,
    known: { page: page.toSorted((a, b) => a - b), here: here.toSorted((a, b) => a - b), layout, elsewhere },
  });
  const remark = fc.constantFrom("", "f", "o", "t", "c");

  it("a lap of ten times the usual is asked about and odd, one like the others is not", () => {
    fc.assert(
      fc.property(around, remark, (all, letter) => {
        const known = [all.paceTimes, all.page, all.here, all.layout, all.elsewhere].some(
          (times) => times.length > 0,
        );
        fc.pre(known || all.pbMs !== undefined);
        const context = contextOf(all);
        const asked = (ms: number) => {
          const shown = `${Math.floor(ms / 60_000)}:${((ms % 60_000) / 1000).toFixed(3).padStart(6, "0")}`;
          return read(`${shown} ${letter}`, context);
        };
        expect(isOdd(asked(all.usual * 10))).toBe(true);
        const usual = asked(all.usual).asks.filter(({ why }) => why !== "far under PB");
        expect(usual).toEqual([]);
      }),
      { seed: 20261128, numRuns: 500 },
    );
  });

  it("no odd line of a paste moves what later lines are read as", () => {
    const plain = ["1:23.900", "1:24.100", "1:23.500", "3912", "24.2", "1:24.0 f", "+0.3"];
    const odd = fc.constantFrom("200:00.0", "13:23.456", "2:50.0", "23:59:59", "0:12.0", "5:00.0 f");
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.constantFrom(...plain), odd), { minLength: 1, maxLength: 12 }),
        (lines) => {
          const isPlain = (text: string) => plain.includes(text) && !text.startsWith("+");
          const context = { ...nothing, ...pb };
          const times = (some: readonly string[]) =>
            parsePaste(some.join("\n"), context).lines.flatMap(({ text, reading }) =>
              isPlain(text) ? [reading.ok ? reading.lap.ms : "refused"] : [],
            );
          expect(times(lines)).toEqual(times(lines.filter(isPlain)));
        },
      ),
      { seed: 20261128, numRuns: 500 },
    );
  });
});
