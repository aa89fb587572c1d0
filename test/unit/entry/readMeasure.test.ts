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

  it("says a range with its unit apart from the figure, degrees at it", () => {
    expect(read("80", rotation)).toMatchObject({ right: "Write a whole number from 90 to 3600°." });
    expect(read("10")).toMatchObject({ right: "Write a number from 20 to 500 cm." });
  });

  it("reads a unit with or without its point", () => {
    const torque: Measure = { name: "Torque", unit: "N·m", least: 0, most: 50 };
    for (const text of ["8.5", "8,5 Nm", "8.5 N·m", "8.5 n m"]) expect(read(text, torque)).toBe(8.5);
  });

  it("reads a speed in any unit, and keeps it in metres a second", () => {
    const speed: Measure = { name: "Lowest speed", unit: "km/h", stored: 1 / 3.6, least: 3.6, most: 540 };
    const near = (text: string) => Number(read(text, speed));
    for (const text of ["90", "90 km/h", "90 kph", "90kmh", "25 m/s", "90 KM/H"])
      expect(near(text), text).toBe(25);
    // One mile an hour is 0.447 04 m/s, one knot 0.514 444 m/s (NIST SP 811, appendix B.8; from memory).
    expect(near("100 mph")).toBeCloseTo(44.704, 9);
    expect(near("100 kn")).toBeCloseTo(51.4444, 4);
    for (let kilometres = 4; kilometres <= 540; kilometres += 1)
      expect(writeMeasure(near(String(kilometres)), speed)).toBe(String(kilometres));
    expect(read("90 m", speed)).toMatchObject({ wrong: "Lowest speed: “m” is not a unit of this field." });
    expect(read("700", speed)).toMatchObject({ right: "Write a number from 3.6 to 540 km/h." });
    expect(read("540", speed)).toBe(150);
  });

  it("reads an acceleration in g, and a length in no unit of speed", () => {
    const braking: Measure = { name: "Braking", unit: "m/s²", least: 1, most: 70 };
    expect([read("9.5", braking), read("9,5 m/s²", braking), read("9.5m/s2", braking)]).toEqual([
      9.5, 9.5, 9.5,
    ]);
    expect(read("1 g", braking)).toBe(9.80665);
    expect(read("1 g", distance)).toMatchObject({ wrong: "Eye distance: “g” is not a unit of this field." });
  });

  it("reads inches, by name and by sign, as a field of centimetres and one of inches have them", () => {
    // An inch is 2.54 cm (international yard and pound agreement, 1959).
    for (const text of ["27 in", "27″", '27"', "27”", "27 inch", "27 inches", "68.58"])
      expect(read(text), text).toBe(0.6858);
    const diagonal: Measure = { name: "Diagonal", unit: "in", stored: 0.0254, least: 5, most: 200 };
    for (const text of ["27", "27 in", "68.58 cm", "685,8 mm"])
      expect(read(text, diagonal), text).toBe(0.6858);
    expect(read("4", diagonal)).toMatchObject({ right: "Write a number from 5 to 200 in." });
    for (let half = 10; half <= 400; half += 1)
      expect(writeMeasure(Number(read(String(half / 2), diagonal)), diagonal)).toBe(String(half / 2));
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
    ["62 spans", "Eye distance: “spans” is not a unit of this field.", "Write a number from 20 to 500 cm."],
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
