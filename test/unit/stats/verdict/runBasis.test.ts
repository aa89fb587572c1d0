import { describe, expect, it } from "vitest";
import type { Run, Surface } from "#domain";
import {
  levelOfPage,
  quantile,
  type RunBasisInput,
  runBasis,
  type SessionDigest,
  sessionDigest,
} from "#stats";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

/** A session of a day with runs of laps; a run may be given whole. */
function session(day: number, ...runs: readonly [readonly Told[], Partial<Run>?][]): SessionDigest {
  const of = aSession(day);
  return sessionDigest(
    of,
    runs.map(([laps, fields], index) => aRun(index + 1, laps, { sessionId: of.id, ...fields })),
    choices,
  );
}

const laps = (usual: number): number[] => [-200, 100, -50, 150, 0].map((ms) => usual + ms);
/** Two runs on each of some days, one 100 ms under, one 100 ms over a usual lap that does not move. */
const evenings = (days: readonly number[]) => days.map((day) => session(day, [laps(83_900)], [laps(84_100)]));

function basisOf(driven: readonly SessionDigest[], fields: Partial<RunBasisInput> = {}) {
  return runBasis({ page: driven, driven, session: aSession(100), surface: "dry", ...fields });
}
const days = [79, 82, 85, 88, 91, 94];

describe("the level that a run is judged by", () => {
  it("is the page's level as it was known when the session began, whatever was driven since", () => {
    const before = evenings(days);
    const since = [session(100, [laps(80_000)]), session(103, [laps(79_000)])];
    const { level } = basisOf([...before, ...since]);
    expect(level).toEqual({ known: true, value: levelOfPage(before) });
  });

  it("needs two sessions", () => {
    expect(basisOf(evenings([94])).level).toMatchObject({
      known: false,
      reason: { needs: 2, of: "session" },
    });
  });

  it("of a wet track comes from wet pace runs alone, and a damp one is not a wet one", () => {
    const wet: Partial<Run> = { surface: "wet" };
    const rainy = days.map((day) =>
      session(
        day,
        [laps(84_000)],
        [laps(95_000), wet],
        [laps(110_000), { ...wet, effort: "easy" }],
        [laps(120_000), { ...wet, kind: "drill" }],
        [laps(130_000), { ...wet, lapsDriven: 12 }],
      ),
    );
    const on = (surface: Surface) => basisOf(rainy, { surface }).level;
    const wetLevel = on("wet");
    expect(wetLevel.known && Math.abs(wetLevel.value - 95_000)).toBeLessThan(20);
    expect(on("damp").known).toBe(false);
  });
});

describe("the spread of the driver's own runs", () => {
  it("is of the distances from the level, widened for what is not known", () => {
    const { spread } = basisOf(evenings(days));
    const distances = spread.known ? spread.value.distances : [];
    expect(distances).toHaveLength(12);
    days.forEach((_, day) => {
      const [fast, slow] = [distances[2 * day] ?? 0, distances[2 * day + 1] ?? 0];
      expect([Math.sign(fast), Math.sign(slow), Math.round(slow - fast)]).toEqual([-1, 1, 200]);
    });
    expect(spread.known && spread.value.s).toBeGreaterThan(100);
    expect(spread.known && spread.value.s).toBeLessThan(250);
  });

  it("needs six pace runs of five laps, and three sessions", () => {
    const two = [88, 91].map((day) => session(day, [laps(83_900)], [laps(84_100)], [laps(84_000)]));
    expect(basisOf(two).spread).toMatchObject({ known: false, reason: { of: "session", has: 2 } });
    expect(basisOf(evenings([85, 88])).spread).toMatchObject({
      known: false,
      reason: { of: "pace run", has: 4 },
    });
    const short = days.map((day) => session(day, [laps(84_000).slice(1)], [laps(84_000).slice(1)]));
    expect(basisOf(short).spread).toMatchObject({ known: false, reason: { has: 0 } });
    expect(basisOf(evenings([85, 88, 91])).spread.known).toBe(true);
  });

  it("is of the last twelve weeks: the day 84 days back counts no more", () => {
    const count = (first: number) => {
      const { spread } = basisOf(evenings([first, 85, 88, 91]));
      return spread.known ? spread.value.distances.length : 0;
    };
    expect(count(16)).toBe(6);
    expect(count(17)).toBe(8);
  });

  it("is wider for who knows less of it: fewer sessions", () => {
    const of = (some: readonly number[]) => {
      const { spread } = basisOf(evenings(some));
      return spread.known ? spread.value.s : Number.NaN;
    };
    expect(of([88, 91, 94])).toBeGreaterThan(of(days));
  });
});

describe("scatters of one's own runs", () => {
  it("give their lower quartile from six on", () => {
    const { scatters } = basisOf(evenings([85, 88, 91]));
    expect(scatters.known && scatters.value.each).toHaveLength(6);
    expect(scatters.known && scatters.value.lowerQuartile).toBe(
      scatters.known && quantile(scatters.value.each, 0.25),
    );
    expect(basisOf(evenings([88, 91])).scatters).toMatchObject({
      known: false,
      reason: { needs: 6, has: 4 },
    });
  });

  it("count exact laps alone, and no difference across a lap without a time", () => {
    const broken: Told[] = [84_000, 84_000, 84_000, [undefined, "off"], 90_000, 90_000, 90_000];
    const rough = laps(84_000).map((ms): Told => ({ ms, decimals: 1 }));
    const { scatters } = basisOf(days.map((day) => session(day, [broken], [rough])));
    expect(scatters.known && scatters.value.each).toEqual(days.map(() => 0));
  });
});

describe("a break", () => {
  const pauseOf = (some: readonly number[]) => basisOf(evenings(some)).pause;

  it("of ten days before the session has no laps since", () => {
    expect(pauseOf([85, 88, 90])).toEqual({ days: 10, lapsSince: 0 });
    expect(pauseOf([85, 88, 91])).toBeUndefined();
  });

  it("before an earlier session leaves the laps driven since", () => {
    expect(pauseOf([70, 75, 92, 95])).toEqual({ days: 17, lapsSince: 20 });
  });

  it("is none where nothing was driven before it", () => {
    expect(pauseOf([])).toBeUndefined();
    expect(pauseOf([99])).toBeUndefined();
  });

  it("is none where the combo was driven on another page", () => {
    const page = evenings([70, 75]);
    const elsewhere = evenings([84, 93]);
    expect(basisOf([], { page, driven: [...page, ...elsewhere] }).pause).toBeUndefined();
  });
});
