import { describe, expect, it } from "vitest";
import { layWay, type Way } from "../../../../src/charts/way/layWay.ts";

const frame = { left: 0, right: 100, top: 0, bottom: 100 };
const way: Way = {
  value: 83_000,
  by: "2026-01-11",
  setOn: "2026-01-01",
  start: 84_000,
  points: [{ date: "2026-01-03", value: 83_500 }],
  today: "2026-01-06",
  isStepped: true,
  steps: [
    { ms: 83_250, by: "2026-01-07" },
    { ms: 83_000, by: "2026-01-09" },
  ],
};
const lay = (fields: Partial<Way> = {}) => {
  const drawing = layWay({ ...way, ...fields }, frame);
  if (drawing === undefined) throw new Error("something is known");
  return drawing;
};

describe("the picture of a target's way", () => {
  it("goes from its setting over today to the wanted value on its day, slower higher", () => {
    const drawing = lay();
    expect(drawing.first).toEqual({ x: 0, y: 0 });
    expect(drawing.now).toEqual({ x: 50, y: 50 });
    expect(drawing.goal).toEqual({ x: 100, y: 100 });
    expect(drawing.wantedY).toBe(100);
  });

  it("has a best lap hold until the next one, and a level go straight to the next", () => {
    expect(lay().known).toBe("M0.0 0.0H20.0V50.0H50.0V50.0");
    expect(lay({ isStepped: false }).known).toBe("M0.0 0.0L20.0 50.0L50.0 50.0");
  });

  it("goes on through the steps to the likely day", () => {
    expect(lay().ahead).toBe("M50.0 50.0L60.0 75.0L80.0 100.0");
    expect(lay().steps).toEqual([{ x: 60, y: 75 }]);
  });

  it("reaches to a likely day not far behind its date, and runs out at the edge where it is far", () => {
    const late = (by: string) => lay({ steps: [{ ms: 83_000, by }] });
    // Twelve days instead of ten: its own day is no longer at the edge.
    expect(late("2026-01-13").goal?.x).toBeCloseTo(1000 / 12, 6);
    expect(late("2026-01-13").ahead.endsWith("L100.0 100.0")).toBe(true);
    // Fifteen days are drawn, 15 days on of 25 to the likely day.
    expect(late("2026-01-31").goal?.x).toBeCloseTo(1000 / 15, 6);
    expect(late("2026-01-31").ahead).toBe("M33.3 50.0L100.0 70.0");
  });

  it("sets steps that no day is known of evenly before the date, and draws no likely way", () => {
    const steps = [
      { ms: 83_250, by: undefined },
      { ms: 83_000, by: undefined },
    ];
    const drawing = lay({ steps });
    expect(drawing.ahead).toBe("");
    expect(drawing.steps[0]?.y).toBe(75);
    expect(drawing.steps[0]?.x).toBeGreaterThan(70);
    expect(drawing.steps[0]?.x).toBeLessThan(81);
  });

  it("ends on its date where that has passed", () => {
    expect(lay({ today: "2026-03-01", steps: [] }).now).toEqual({ x: 100, y: 50 });
  });

  it("is none where nothing is known, and needs no start", () => {
    expect(layWay({ ...way, start: undefined, points: [] }, frame)).toBeUndefined();
    expect(lay({ start: undefined }).first).toEqual({ x: 20, y: 0 });
  });

  it("looks six weeks ahead without a date", () => {
    const drawing = lay({ by: undefined, steps: [] });
    expect(drawing.goal).toBeUndefined();
    expect(drawing.todayAt).toBeCloseTo((100 * 5) / 47, 6);
  });
});
