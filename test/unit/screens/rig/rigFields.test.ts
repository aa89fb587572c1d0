import { expect, test } from "vitest";
import { type RigSettings, rigRanges } from "#domain";
import { type RigPart, rigFields } from "../../../../src/screens/rig/rigFields.ts";
import { readRig, textKey, textsOf } from "../../../../src/screens/rig/rigTexts.ts";
import { wholeRows } from "../../../support/wholeRows.ts";

const { rigs } = wholeRows as unknown as { readonly rigs: RigSettings };

test("every figure of a record has a field", () => {
  const asked = rigFields.map(textKey);
  for (const [part, ranges] of Object.entries(rigRanges))
    for (const key of Object.keys(ranges)) expect(asked).toContain(textKey({ part: part as RigPart, key }));
});

test("a record written into the fields and read back is the same, dead zones and heights too", () => {
  const reading = readRig({ ...textsOf(rigs), from: "2026-03-02" });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const { pedals, seat, wheel } = reading.value;
  expect(pedals).toEqual(rigs.pedals);
  expect(seat).toEqual(rigs.seat);
  expect(wheel).toEqual(rigs.wheel);
});

test("a dead zone over all of the travel, and a seat above the ceiling, are refused with what would be right", () => {
  const reading = readRig({ from: "2026-03-02", "pedals.brakeDeadZone": "101", "seat.eyeHeight": "300" });
  expect(reading).toMatchObject({
    ok: false,
    problems: {
      "pedals.brakeDeadZone": { right: "Write a number from 0 to 100 %." },
      "seat.eyeHeight": { right: "Write a number from 20 to 250 cm." },
    },
  });
});
