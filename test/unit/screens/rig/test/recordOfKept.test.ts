import { expect, test } from "vitest";
import type { RigSettings } from "#domain";
import { recordOfKept } from "../../../../../src/screens/rig/test/recordOfKept.ts";

const inForce: RigSettings = {
  id: "rig",
  createdAt: 1,
  updatedAt: 1,
  from: "2026-11-03",
  name: "gain up",
  screen: { width: 0.7 },
  view: { degrees: 57 },
  wheel: { gainPercent: 72, torque: 5 },
  pedals: {},
  seat: {},
  note: "old",
};
const gain = {
  test: { field: "wheel.gainPercent", valueA: 72, valueB: 54 },
  sides: { sayA: "gain 72 %", sayB: "gain 54 %" },
  inForce,
  today: "2026-11-25",
  note: "After a rig test.",
};
const gloves = { ...gain, test: {}, sides: { sayA: "without", sayB: "with gloves" } };

test("the value that was tried begins a record that is else the one in force", () => {
  expect(recordOfKept({ ...gain, side: "B" })).toEqual({
    from: "2026-11-25",
    name: "gain 54 %",
    note: "After a rig test.",
    screen: { width: 0.7 },
    view: { degrees: 57 },
    wheel: { gainPercent: 54, torque: 5 },
    pedals: {},
    seat: {},
  });
});

test("what is in force already begins no record; what was changed meanwhile goes back to it", () => {
  expect(recordOfKept({ ...gain, side: "A" })).toBeUndefined();
  const changed = { ...inForce, wheel: { gainPercent: 60 } };
  expect(recordOfKept({ ...gain, side: "A", inForce: changed })?.wheel).toEqual({ gainPercent: 72 });
});

test("where nothing was written down the value stands alone", () => {
  expect(recordOfKept({ ...gain, side: "B", inForce: undefined })).toMatchObject({
    screen: {},
    wheel: { gainPercent: 54 },
  });
});

test("a setting in words begins a record of its name; without it nothing changes", () => {
  expect(recordOfKept({ ...gloves, side: "B" })).toMatchObject({
    name: "with gloves",
    wheel: { gainPercent: 72, torque: 5 },
  });
  expect(recordOfKept({ ...gloves, side: "A" })).toBeUndefined();
});
