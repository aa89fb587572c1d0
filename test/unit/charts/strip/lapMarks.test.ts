import { describe, expect, it } from "vitest";
import { remarkKinds, type StripLap } from "#domain";
import { farMark, lapMark } from "../../../../src/charts/strip/lapMarks.ts";

const lap: StripLap = { id: "1", name: "Lap 1", ms: 84_000 };
const drawn = (changes: Partial<StripLap>) => lapMark({ ...lap, ...changes }, 50, 50, 4.5);
/** Its shape alone: what is left of a mark for somebody who sees no colours. */
const shapeOf = (changes: Partial<StripLap>) =>
  JSON.stringify(drawn(changes).map(({ how, path }) => [how, path]));

describe("lapMark", () => {
  it("tells every kind of lap by its shape, whatever the ink", () => {
    const shapes = [
      shapeOf({}),
      ...remarkKinds.map(({ kind }) => shapeOf({ remarks: [{ kind }] })),
      JSON.stringify(lapMark({ id: "1", name: "Lap 1" }, 50, 50, 4.5).map(({ how, path }) => [how, path])),
      shapeOf({ isFromMemory: true }),
      shapeOf({ surface: "wet" }),
      shapeOf({ surface: "wet", isFromMemory: true }),
      shapeOf({ isApart: true }),
      shapeOf({ isBest: true }),
    ];
    expect(new Set(shapes).size).toBe(shapes.length);
  });

  it("draws a lap from memory open", () => {
    expect(drawn({ isFromMemory: true }).map(({ how }) => how)).toEqual(["ring"]);
    expect(drawn({}).map(({ how }) => how)).toEqual(["filled"]);
  });

  it("keeps the shape of a wet lap inside the mark of its off", () => {
    const off = { remarks: [{ kind: "off" }] } as const;
    expect(shapeOf({ ...off, surface: "damp" })).not.toBe(shapeOf(off));
  });

  it("has a cross for a lap without a time, also with an off, but not for one that left the pits", () => {
    const lost = (kind?: "off" | "out") =>
      lapMark({ id: "1", name: "Lap 1", remarks: kind ? [{ kind }] : [] }, 50, 50, 4.5)[0]?.path;
    expect(lost("off")).toBe(lost());
    expect(lost("out")).toBe(drawn({ remarks: [{ kind: "out" }] })[0]?.path);
  });

  it("stands within two radii and a half of its place", () => {
    for (const { kind } of remarkKinds) {
      for (const { path } of drawn({ remarks: [{ kind }] })) {
        const [x = 0, y = 0] = (/^M([\d.]+) ([\d.]+)/.exec(path) ?? []).slice(1).map(Number);
        expect(Math.hypot(x - 50, y - 50)).toBeLessThan(4.5 * 2.5);
      }
    }
  });
});

describe("farMark", () => {
  it("points the way", () => {
    const tip = (way: "up" | "down") => Number(/L50 ([\d.]+)L/.exec(farMark(50, 50, 4, way).path)?.[1]);
    expect(tip("up")).toBeLessThan(50);
    expect(tip("down")).toBeGreaterThan(50);
  });
});
