import { describe, expect, it } from "vitest";
import { bridgeSteps, bridgeTable } from "../../../src/charts/bridge/bridgeTable.ts";
import { consistencyTable, sayConsistency } from "../../../src/charts/consistency/consistencyTable.ts";
import { csvCells } from "../../../src/charts/frame/chartTable.ts";
import { progressTable } from "../../../src/charts/progress/progressTable.ts";
import { progressWalk } from "../../../src/charts/progress/progressWalk.ts";
import { pageRuleAt, sessionPlaces } from "../../../src/charts/progress/sessionPlaces.ts";

const session = { id: "a", date: "2026-10-14", startedAt: 1, laps: 24, isPresentPage: true };

describe("progressTable", () => {
  const table = progressTable({
    sessions: [
      { ...session, median: 84_094, q1: 83_900.5, q3: 84_402, best: 83_704 },
      { ...session, id: "b", laps: 2, isPresentPage: false },
    ],
    curve: [
      { date: "2026-10-14", ms: 84_000 },
      { date: "2026-10-21", ms: 83_900, half: [83_600, 84_200] },
    ],
  });

  it("reads as lap times, and says where there is nothing", () => {
    expect(table.rows.map(({ cells }) => cells["usual"]?.text)).toEqual(["1:24.094", "—", "1:23.90"]);
    expect(table.rows[1]?.soft).toBe(true);
  });

  it("goes into a spreadsheet as seconds and dates, unknowns empty, forecast told apart", () => {
    expect(csvCells(table)).toEqual([
      [
        "date",
        "pace_laps",
        "usual_s",
        "half_from_s",
        "half_to_s",
        "best_pace_lap_s",
        "best_of_ten_s",
        "page",
      ],
      ["2026-10-14", 24, 84.094, 83.901, 84.402, 83.704, "", "present"],
      ["2026-10-14", 2, "", "", "", "", "", "older"],
      ["2026-10-21", "", 83.9, 83.6, 84.2, "", "", "forecast"],
    ]);
  });
});

describe("a session typed in tenths", () => {
  const tenths = { ...session, median: 84_450, medianDecimals: 1, q1: 84_200, q3: 84_625.5 };
  const bests = { best: 83_900, bestDecimals: 1, bestOfTen: 84_050.4 };
  const data = {
    sessions: [{ ...tenths, ...bests }],
    pbSteps: [],
    targets: [],
    curve: [{ date: "2026-10-21", ms: 83_917.4 }],
  };

  it("has its usual lap in tenths in the chart's table and for a spreadsheet", () => {
    const { rows } = progressTable(data);
    expect(["usual", "from", "to", "best", "bestOfTen"].map((key) => rows[0]?.cells[key])).toEqual([
      { text: "1:24.4", value: 84.4 },
      { text: "1:24.2", value: 84.2 },
      { text: "1:24.6", value: 84.6 },
      { text: "1:23.9", value: 83.9 },
      { text: "1:24.0", value: 84 },
    ]);
  });

  it("is read out in tenths, and the level in hundredths", () => {
    const texts = progressWalk(data, () => 0).flatMap(({ points }) => points.map(({ text }) => text));
    expect(texts).toEqual([
      "Wednesday 14 October: usual 1:24.4, half of the laps 1:24.2 to 1:24.6, best pace lap 1:23.9, best of ten 1:24.0, 24 pace laps",
      "Wednesday 21 October: level 1:23.92",
    ]);
  });
});

describe("consistencyTable", () => {
  it("gives scatter and its interval in percent", () => {
    const known = { ...session, scatterPercent: 0.412, intervalPercent: [0.3, 0.625] as const };
    expect(csvCells(consistencyTable([known, session])).slice(1)).toEqual([
      ["2026-10-14", 24, 0.412, 0.3, 0.625, "present"],
      ["2026-10-14", 24, "", "", "", "present"],
    ]);
    expect(sayConsistency(known)).toBe(
      "Wednesday 14 October: scatter 0.41 %, very likely 0.30 to 0.63 %, 24 pace laps",
    );
  });
});

describe("the bridge", () => {
  const lines = [
    { id: "pace", label: "pace", ms: 420 },
    { id: "others", label: "others on track", ms: -50 },
  ];
  const balance = { id: "balance", label: "balance", ms: 370 };

  it("begins each line where the one before ended", () => {
    expect(bridgeSteps(lines).map(({ from, to }) => [from, to])).toEqual([
      [0, 420],
      [420, 370],
    ]);
  });

  it("signs every figure and puts the balance last", () => {
    const table = bridgeTable(lines, balance);
    expect(table.rows.map(({ cells }) => cells["seconds"]?.text)).toEqual(["+0.420 s", "−0.050 s"]);
    expect(csvCells(table).at(-1)).toEqual(["balance", 0.37]);
  });
});

describe("places of sessions", () => {
  it("stand at their day, two of a day side by side in order of start", () => {
    const places = sessionPlaces([
      { id: "late", date: "1970-01-11", startedAt: 9 },
      { id: "early", date: "1970-01-11", startedAt: 3 },
      { id: "alone", date: "1970-01-21", startedAt: 1 },
    ]);
    expect([places.get("early"), places.get("late"), places.get("alone")]).toEqual([9.75, 10.25, 20]);
  });

  it("show the new page between old and present", () => {
    const at = (x: number, isPresentPage: boolean) => ({ x, session: { isPresentPage } });
    expect(pageRuleAt([at(1, false), at(3, false), at(5, true)])).toBe(4);
    expect(pageRuleAt([at(5, true)])).toBeUndefined();
  });
});
