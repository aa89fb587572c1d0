import { describe, expect, it } from "vitest";
import type { Remark, Run } from "#domain";
import { oddInTable, type TableCombo } from "#entry";

const row = (ms: number, remarks: readonly Remark[] = [], isOdd?: true) => ({
  lap: { ms, decimals: 3, remarks, ...(isOdd && { isOdd }) },
});
type Row = ReturnType<typeof row>;
const dry = { kind: "pace", effort: "full", surface: "dry" } as const;
const session = (laps: readonly Row[], settings: Pick<Run, "kind" | "effort" | "surface"> = dry) => ({
  runs: [{ settings, laps }],
});
const combo = (
  sessions: ReturnType<typeof session>[],
  fields: Partial<TableCombo<Row>> = {},
): TableCombo<Row> => ({
  layout: "Varnholt Ring",
  sessions,
  around: undefined,
  ...fields,
});
const odd = (...combos: TableCombo<Row>[]) => [...oddInTable(combos)].map(([{ lap }, why]) => [lap.ms, why]);
const evening = [83_400, 83_900, 83_600, 84_200, 83_500].map((ms) => row(ms));

describe("laps of a table", () => {
  it("are pointed at where they lie beyond the usual of their session, wherever they stand in it", () => {
    const slow = [row(12_000_000), ...evening, row(99_000), row(99_000, [{ kind: "off" }])];
    expect(odd(combo([session(slow)]))).toEqual([
      [12_000_000, "3:20:00.000 is more than 3 times this session's usual lap, 1:23.900."],
      [99_000, "1:39.000 is 18.0 % over this session's usual lap and has no remark."],
    ]);
  });

  it("are pointed at where they lie as far under it, for no question about a PB was asked of them", () => {
    const fast = [row(43_456), ...evening, row(29_900), row(74_000, [{ kind: "cut" }])];
    expect(odd(combo([session(fast)]))).toEqual([
      [43_456, "43.456 is 48.0 % under this session's usual lap and has no remark."],
      [29_900, "29.900 is 64.2 % under this session's usual lap and has no remark."],
    ]);
  });

  it("of weeks of progress are not pointed at, however far the last are under the first", () => {
    const weeks = Array.from({ length: 30 }, (_, week) =>
      session(evening.map(({ lap }) => row(lap.ms + 40_000 - week * 1300))),
    );
    expect(odd(combo(weeks))).toEqual([]);
    const learning = [112_000, 109_500, 106_000, 104_200, 103_100, 102_500, 101_900];
    expect(odd(combo([session(learning.map((ms) => row(ms)))]))).toEqual([]);
  });

  it("are judged by the rest of the combo, other cars, and other combos where their session is short", () => {
    const lone = session([row(803_456)]);
    expect(odd(combo([lone, session(evening)]))[0]?.[1]).toMatch(/your usual lap here/);
    expect(odd(combo([lone]), combo([session(evening)]))[0]?.[1]).toMatch(/other cars/);
    const elsewhere = combo([session(evening)], { layout: "Old Mill" });
    expect(odd(combo([lone]), elsewhere)[0]?.[1]).toMatch(/your laps elsewhere/);
    expect(odd(combo([lone]))).toEqual([]);
    expect(odd(combo([session([row(12_000_000)])]))[0]?.[1]).toMatch(/any circuit/);
  });

  it("are judged by what the book knows, where the table knows less", () => {
    const stamps = { createdAt: 1, updatedAt: 1 };
    const run: Run = {
      ...dry,
      ...stamps,
      id: "r",
      sessionId: "s",
      comboId: "k",
      n: 1,
      startedAt: 1,
      note: "",
      laps: evening.map(({ lap }, n) => ({ ...lap, ...stamps, id: `l${n}`, n, source: "typed" as const })),
    };
    const around = { page: [run], layout: [], elsewhere: [], lengthMetres: undefined };
    expect(odd(combo([session([row(99_000)])], { around }))).toEqual([
      [99_000, "1:39.000 is 18.4 % over your usual lap here and has no remark."],
    ]);
    const length = { page: [], layout: [], elsewhere: [], lengthMetres: 4_000 };
    expect(odd(combo([session([row(803_456)])], { around: length }))[0]?.[1]).toMatch(/laps of 4,000 m/);
  });

  it("of a wet evening alone are only odd beyond 3 times the dry ones, and among themselves as strictly as those", () => {
    const wet = { ...dry, surface: "wet" } as const;
    expect(odd(combo([session(evening), session([row(103_000)], wet)]))).toEqual([]);
    expect(odd(combo([session(evening), session([row(303_000)], wet)]))).toHaveLength(1);
    const rain = [103_000, 103_500, 104_000, 103_300, 103_900, 120_000].map((ms) => row(ms));
    expect(odd(combo([session(evening), session(rain, wet)])).map(([ms]) => ms)).toEqual([120_000]);
  });

  it("are not pointed at again once they were confirmed, and weigh nothing then", () => {
    const confirmed = [row(12_000_000, [], true), row(12_100_000, [], true), row(12_000_000, [], true)];
    expect(odd(combo([session([...confirmed, ...evening])]))).toEqual([]);
  });

  it("the first of a race may be slow", () => {
    const race = { ...dry, kind: "race" } as const;
    expect(odd(combo([session([row(99_000), ...evening], race)]))).toEqual([]);
    expect(odd(combo([session([...evening, row(99_000)], race)]))).toHaveLength(1);
  });
});
