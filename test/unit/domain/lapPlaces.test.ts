import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addCounts,
  efforts,
  isClean,
  isPaceRun,
  type Lap,
  lapPlaces,
  lapsInPlace,
  noCounts,
  type RemarkKind,
  type Run,
  remarkKinds,
  runKinds,
  surfaces,
} from "#domain";

const stamps = { createdAt: 0, updatedAt: 0 };

function lap(n: number, ms: number | undefined, ...kinds: RemarkKind[]): Lap {
  const remarks = kinds.map((kind) => ({ kind }));
  const rest = { ...stamps, id: `lap ${n}`, n, source: "typed", remarks } as const;
  return ms === undefined ? rest : { ...rest, ms, decimals: 3 };
}

const run: Run = {
  ...stamps,
  id: "run",
  sessionId: "s",
  comboId: "c",
  n: 1,
  startedAt: 0,
  kind: "pace",
  effort: "full",
  surface: "dry",
  note: "",
  laps: [lap(3, 83_000), lap(1, 95_000, "out"), lap(2, 84_000), lap(4, 90_000, "spin"), lap(5, undefined)],
};
const placesOf = (one: Run, settlingLaps = 0) =>
  lapsInPlace(one, settlingLaps).map(({ lap: { n }, place }) => [n, place]);

describe("places of laps", () => {
  it("takes pace from dry pace runs of the driver's own, brisk or full", () => {
    expect(isPaceRun(run)).toBe(true);
    expect(isPaceRun({ ...run, effort: "brisk" })).toBe(true);
    expect(isPaceRun({ ...run, effort: "learning" })).toBe(false);
    expect(isPaceRun({ ...run, surface: "damp" })).toBe(false);
    expect(isPaceRun({ ...run, kind: "race" })).toBe(false);
    expect(isPaceRun({ ...run, guest: "" })).toBe(false);
  });

  it("follow the laps' order and their remarks, and leave the first of a run out of the pace", () => {
    const told = (third: string) => [
      [1, "outOrIn"],
      [2, third],
      [3, "pace"],
      [4, "mistake"],
      [5, "noTime"],
    ];
    expect(placesOf({ ...run, laps: [...run.laps, { ...lap(6, 80_000), deletedAt: 5 }] })).toEqual(
      told("pace"),
    );
    expect(placesOf(run, 2)).toEqual(told("settling"));
  });

  it("of a lap with several remarks are those of the weightiest, whatever was typed first", () => {
    const placeOf = (ms: number | undefined, ...kinds: RemarkKind[]) =>
      lapsInPlace({ ...run, laps: [lap(1, ms, ...kinds)] }, 0)[0]?.place;
    expect(placeOf(90_000, "traffic", "spin")).toBe("mistake");
    expect(placeOf(90_000, "spin", "cut")).toBe("cut");
    expect(placeOf(90_000, "cut", "in")).toBe("outOrIn");
    expect(placeOf(undefined, "spin")).toBe("noTime");
    expect(placeOf(undefined, "out")).toBe("outOrIn");
  });

  it("are those of the run where it is no pace run, or not all of it is written down", () => {
    const all = (fields: Partial<Run>) => [
      ...new Set(placesOf({ ...run, ...fields }).map(([, place]) => place)),
    ];
    expect(all({ kind: "race", surface: "wet" })).toEqual(["race"]);
    expect(all({ surface: "damp" })).toEqual(["wet"]);
    expect(all({ effort: "learning" })).toEqual(["easy"]);
    expect(all({ lapsDriven: 9 })).toEqual(["partly"]);
    expect(all({ lapsDriven: 5 })).toContain("pace");
  });

  it("call a clean lap one of pace in a pace run alone, whatever the run", () => {
    const kinds = fc.subarray(remarkKinds.map(({ kind }) => kind));
    fc.assert(
      fc.property(
        fc.record({
          kind: fc.constantFrom(...runKinds),
          effort: fc.constantFrom(...efforts),
          surface: fc.constantFrom(...surfaces),
        }),
        fc.option(fc.integer({ min: 60_000, max: 120_000 }), { nil: undefined }),
        kinds,
        (fields, ms, marks) => {
          const one = lap(1, ms, ...marks);
          const [placed] = lapsInPlace({ ...run, ...fields, laps: [one] }, 0);
          expect(placed?.place === "pace").toBe(isPaceRun({ ...run, ...fields }) && isClean(one));
        },
      ),
      { seed: 4, numRuns: 500 },
    );
  });

  it("are counted together over runs", () => {
    const [one, other] = [
      { ...noCounts(), pace: 3, race: 1, driven: 4 },
      { ...noCounts(), pace: 2, driven: 2 },
    ];
    expect(addCounts([one, other])).toEqual({ ...noCounts(), pace: 5, race: 1, driven: 6 });
    expect(Object.keys(addCounts([])).sort()).toEqual([...lapPlaces, "driven"].sort());
  });
});
