import { expect, test } from "vitest";
import { rigValue } from "#domain";

const rig = { screen: { kind: "flat" }, view: {}, wheel: { gainPercent: 54 }, pedals: {}, seat: {} } as const;

test("a value of a record is found by the name that a rig test gives it", () => {
  expect(rigValue(rig, "wheel.gainPercent")).toBe(54);
  expect(rigValue(rig, "screen.kind")).toBe("flat");
  expect([rigValue(rig, "wheel.damping"), rigValue(rig, "shoes.size"), rigValue(rig, "")]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});
