import { describe, expect, it } from "vitest";
import type { Run } from "#domain";
import { raceOutlook } from "#stats";
import { longRunTrend } from "../../../../src/stats/race/longRunTrend.ts";
import { raceBasis } from "../../../../src/stats/race/raceBasis.ts";
import { aRun, choices, type Told } from "../someRows.ts";

const laps = (count: number, from = 84_000, step = 0): Told[] =>
  Array.from({ length: count }, (_, lap) => from + step * lap + (lap % 2 === 0 ? 30 : -30));
const run = (n: number, told: readonly Told[], fields: Partial<Run> = {}) => aRun(n, told, fields);
/** Newest first. */
const idsOf = (runs: readonly Run[]) => raceBasis(runs).runs.map(({ n }) => n);

describe("the laps behind a race distance", () => {
  it("are those of race runs where they are enough, and else of pace runs", () => {
    const pace = [run(3, laps(8)), run(2, laps(8))];
    expect(raceBasis([run(4, laps(6), { kind: "race" }), ...pace])).toMatchObject({ kind: "race" });
    // The first lap of a race begins at a stand: four are left.
    expect(raceBasis([run(4, laps(5), { kind: "race" }), ...pace])).toMatchObject({ kind: "pace" });
    expect(raceBasis([])).toEqual({ kind: "pace", runs: [], laps: [] });
  });

  it("come from the last eight runs driven for time: no drill, no wet run, nobody else's", () => {
    const others = [
      run(20, laps(8), { kind: "drill" }),
      run(19, laps(8), { surface: "wet" }),
      run(18, laps(8), { guest: "Ada" }),
      run(17, laps(8), { effort: "learning" }),
      run(16, [], {}),
    ];
    const nine = Array.from({ length: 9 }, (_, index) => run(9 - index, laps(6)));
    expect(idsOf([...others, ...nine])).toEqual([9, 8, 7, 6, 5, 4, 3, 2]);
    const old = run(1, laps(9), { kind: "race" });
    expect(raceBasis([...nine.slice(0, 8), old]).kind).toBe("pace");
  });

  it("hold mistakes with and without a time, and neither out laps nor in laps", () => {
    const told: Told[] = [[90_000, "out"], 84_000, [89_000, "off"], [undefined, "spin"], [undefined, "in"]];
    expect(raceBasis([run(1, told)]).laps).toEqual([
      { ms: 84_000, remarks: [], run: "run s 1" },
      { ms: 89_000, remarks: [{ kind: "off" }], run: "run s 1" },
      { remarks: [{ kind: "spin" }], run: "run s 1" },
    ]);
  });
});

describe("the pace over a long run", () => {
  it("is the middle of the runs' own trends, with an interval over runs", () => {
    const steps = [10, 14, 18, 22, 26, 30];
    const runs = steps.map((step, n) =>
      run(
        n + 1,
        Array.from({ length: 10 }, (_, lap) => 84_000 + step * lap),
      ),
    );
    const trend = longRunTrend(runs, choices);
    // By hand: the median of all pair means of 10, 14 … 30 is 20, and nine in ten signed ranks of six leave out the two ends.
    expect(trend).toMatchObject({ known: true, value: { msPerLap: 20, runs: 6, longest: 10 } });
    if (!trend.known) throw new Error("it is known");
    expect(trend.value.low).toBeGreaterThanOrEqual(10);
    expect(trend.value.low).toBeLessThan(trend.value.msPerLap);
    expect(trend.value.high).toBeLessThanOrEqual(30);
  });

  it("of fewer than five runs is that of the longest", () => {
    const short = run(
      1,
      Array.from({ length: 6 }, (_, lap) => 84_000 + 50 * lap),
    );
    const long = run(
      2,
      Array.from({ length: 12 }, (_, lap) => 84_000 - 20 * lap),
    );
    expect(longRunTrend([short, long], choices)).toMatchObject({
      value: { msPerLap: -20, runs: 1, longest: 12 },
    });
  });

  it("needs six clean laps in one run", () =>
    expect(longRunTrend([run(1, laps(5)), run(2, laps(4))], choices)).toEqual({
      known: false,
      reason: { needs: 6, of: "clean lap", has: 5 },
    }));
});

describe("a race to come", () => {
  const runs = [3, 2, 1].map((n) => run(n, laps(10, 84_000 + 100 * n)));
  const ask = { comboId: "combo", runs, choices };

  it("is the same each time it is asked, and says what it rests on", () => {
    const outlook = raceOutlook({ ...ask, race: { count: 20 } });
    expect(raceOutlook({ ...ask, race: { count: 20 } })).toEqual(outlook);
    expect(outlook.basis).toEqual({ kind: "pace", runs: 3, laps: 30 });
  });

  it("lays twenty equally likely races out whose middle is its own, as many of them ahead as the chance says", () => {
    for (const rivalMeanMs of [84_000, 84_150, 84_300, 84_500]) {
      const { distance } = raceOutlook({ ...ask, race: { count: 20, rivalMeanMs } });
      if (!distance.known) throw new Error("it is known");
      const { likely, mid, aheadChance = 0 } = distance.value;
      expect(likely).toHaveLength(20);
      expect(likely).toEqual(likely.toSorted((a, b) => a - b));
      expect(Math.abs(((likely[9] ?? 0) + (likely[10] ?? 0)) / 2 - mid / 20)).toBeLessThan(30);
      const ahead = likely.filter((ms) => ms < rivalMeanMs).length;
      expect(Math.abs(ahead - 20 * aheadChance)).toBeLessThanOrEqual(0.6);
    }
  });

  it("of minutes holds the laps that go into them", () => {
    const { distance } = raceOutlook({ ...ask, race: { minutes: 28 } });
    // 28 minutes are 1680 s; 19.96 laps of 84.2 s.
    expect(distance).toMatchObject({ known: true, value: { laps: { mid: 20 } } });
  });

  it("tells the pace over a long run from runs of either kind, races or not", () => {
    const races = [run(9, laps(8), { kind: "race" })];
    const outlook = raceOutlook({ ...ask, runs: [...races, ...runs, run(0, laps(10))], race: { count: 20 } });
    expect(outlook.basis).toEqual({ kind: "race", runs: 1, laps: 7 });
    expect(outlook.trend).toMatchObject({ known: true, value: { runs: 5, longest: 10 } });
  });

  it("says what is missing with too few laps", () =>
    expect(raceOutlook({ ...ask, runs: [run(1, laps(4))], race: { count: 20 } }).distance).toEqual({
      known: false,
      reason: { needs: 5, of: "timed lap", has: 4 },
    }));
});
