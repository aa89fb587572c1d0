import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Measure, readMeasure, writeMeasure } from "#entry";

const distance: Measure = { name: "Eye distance", unit: "cm", stored: 0.01, least: 20, most: 500 };
const rotation: Measure = { name: "Rotation", unit: "°", least: 90, most: 3600, isWhole: true };
const read = (text: string, measure = distance) => {
  const reading = readMeasure(text, measure);
  return reading.ok ? reading.value : reading.problem;
};

describe("a figure with a unit", () => {
  it.each([
    ["62.5", 0.625],
    ["62,5", 0.625],
    [" 62 cm ", 0.62],
    ["620 mm", 0.62],
    ["0,62m", 0.62],
    [".5 m", 0.5],
    ["", undefined],
  ])("reads %j", (text, value) => {
    expect(read(text)).toBe(value);
  });

  it("reads a unit with or without its point", () => {
    const torque: Measure = { name: "Torque", unit: "N·m", least: 0, most: 50 };
    for (const text of ["8.5", "8,5 Nm", "8.5 N·m", "8.5 n m"]) expect(read(text, torque)).toBe(8.5);
  });

  it("asks when a comma may stand for thousands", () => {
    expect(read("1,080", rotation)).toMatchObject({
      wrong: "Rotation: “1,080” can be read in two ways.",
      right: "Write 1080 or 1.080, without the comma.",
    });
  });

  it.each([
    ["12", "Eye distance: 12 is out of range.", "Write a number from 20 to 500 cm."],
    ["-62", "Eye distance: -62 is out of range.", "Write a number from 20 to 500 cm."],
    ["sixty", "Eye distance: “sixty” is not a number.", "Write a number from 20 to 500 cm."],
    ["62 inches", "Eye distance: “inches” is not a unit of this field.", "Write a number from 20 to 500 cm."],
    ["1e2", "Eye distance: “1e2” is not a number.", "Write a number from 20 to 500 cm."],
    ["1.2.3", "Eye distance: “1.2.3” is not a number.", "Write a number from 20 to 500 cm."],
  ])("says what is wrong with %j", (text, wrong, right) => {
    expect(read(text)).toMatchObject({ wrong, right });
  });

  it("wants whole numbers where parts make no sense", () => {
    expect(read("900.5", rotation)).toMatchObject({ wrong: "Rotation: 900.5 is not a whole number." });
    expect(read("900,0", rotation)).toBe(900);
  });

  it("reads back what it wrote", () => {
    fc.assert(
      fc.property(fc.integer({ min: 200, max: 5000 }), (millimetres) => {
        const metres = millimetres / 1000;
        expect(read(writeMeasure(metres, distance))).toBe(metres);
      }),
    );
  });

  it("never throws and never stores a figure out of range", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const reading = readMeasure(text, distance);
        if (reading.ok && reading.value !== undefined) {
          expect(reading.value).toBeGreaterThanOrEqual(0.2);
          expect(reading.value).toBeLessThanOrEqual(5);
        }
      }),
    );
  });
});
