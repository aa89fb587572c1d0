import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Corner } from "#domain";
import {
  cellsOf,
  cornerCells,
  type TypedCorner,
} from "../../../../../src/screens/corners/layout/cornerCells.ts";
import { type AroundCorner, readCorner } from "../../../../../src/screens/corners/layout/readCorner.ts";

const around: AroundCorner = { car: {}, sectors: 3, speeds: new Map() };
const read = (typed: TypedCorner, corner: Corner = { number: 5 }, more: Partial<AroundCorner> = {}) =>
  readCorner(typed, corner, { ...around, ...more });

describe("a corner as it is typed", () => {
  it("is read from single letters, and says what each was read as", () => {
    const { edit, said, problems } = read({ direction: "r", bend: "h", after: "l", sector: "2" });
    expect(problems).toEqual({});
    expect(edit).toEqual({
      number: 5,
      patch: { direction: "right", bend: "hairpin", after: "long", afterLength: undefined, sector: 2 },
    });
    expect(said).toEqual({ direction: "right", bend: "hairpin", after: "long", sector: "2" });
  });

  it.each([
    ["250", { after: undefined, afterLength: 250 }, "250 m"],
    ["0.25 km", { after: undefined, afterLength: 250 }, "250 m"],
    ["0", { after: "none", afterLength: undefined }, "none"],
    ["n", { after: "none", afterLength: undefined }, "none"],
    ["at once", { after: "none", afterLength: undefined }, "none"],
    ["medium", { after: "middling", afterLength: undefined }, "middling"],
  ])("knows what follows from %j", (text, patch, words) => {
    const { edit, said } = read({ after: text });
    expect(edit.patch).toEqual(patch);
    expect(said.after).toBe(words);
  });

  it("changes only what is typed, and an emptied cell is not known any more", () => {
    expect(read({}).edit).toEqual({ number: 5, patch: {} });
    expect(read({ name: " ", radius: "", kerbExit: "", speed: "" }).edit).toEqual({
      number: 5,
      patch: { name: undefined, radius: undefined, kerbs: { exit: undefined } },
      lowestSpeed: undefined,
    });
  });

  it("takes a decimal comma and other units", () => {
    const { edit, said } = read({ radius: "42,5", kerbEntry: "50 cm", speed: "25 m/s", angle: "95 °" });
    expect(edit).toEqual({
      number: 5,
      patch: { radius: 42.5, angle: 95, kerbs: { entry: 0.5 } },
      lowestSpeed: 25,
    });
    expect(said.speed).toBe("90");
    // 60 miles an hour are 96.56 km/h.
    expect(read({ speed: "60 mph" }).said.speed).toBe("96.6");
  });

  it("says at the cell what is wrong and what would be right, and reads the others", () => {
    const { edit, problems } = read({
      direction: "up",
      bend: "twisty",
      sector: "4",
      angle: "3",
      radius: "40",
    });
    expect(edit.patch).toEqual({ radius: 40 });
    expect(problems).toMatchObject({
      direction: { wrong: "Turns: “up” is none of the words it may be.", right: "Write left or right." },
      bend: { right: "Write hairpin, slow, middling, fast or kink." },
      sector: { wrong: "Sector: 4 is more than there are.", right: "This layout has 3." },
      angle: { wrong: "Angle: 3 is out of range.", right: "Write a number from 5 to 200°." },
    });
    expect(read({ after: "soon" }).problems.after).toMatchObject({
      right: "Write none, short, middling or long, or its length in metres, such as 250.",
    });
    expect(read({ after: "-5" }).problems.after).toMatchObject({
      wrong: "What follows: -5 is out of range.",
    });
    expect(read({ number: "" }).problems.number).toMatchObject({ wrong: "A corner needs a number." });
    expect(read({ name: "x".repeat(500) }).problems.name).toMatchObject({
      wrong: expect.stringMatching(/500 signs/),
    });
  });

  it("refuses a road no wider than the car, known or assumed", () => {
    expect(read({ width: "2" }, undefined, { car: { width: 2 } }).problems.width).toMatchObject({
      wrong: "Width: 2 m is no wider than the car.",
      right: "The car is 2 m wide. Write more than that, or put the car right.",
    });
    expect(read({ width: "2.01" }, undefined, { car: { width: 2 } }).problems).toEqual({});
    expect(read({ width: "1.5" }).problems.width).toMatchObject({
      right: expect.stringMatching(/taken to be 1\.8 m/),
    });
  });

  it("refuses a kerb at the apex as wide as the bend is tight, at the cell that was typed", () => {
    const problem = {
      wrong: "Kerb at apex: 3 m is no narrower than the inner radius of 3 m.",
      right: "Write less, or put the radius right.",
    };
    expect(read({ kerbApex: "3" }, { number: 5, radius: 3 }).problems).toEqual({ kerbApex: problem });
    expect(read({ radius: "3" }, { number: 5, kerbs: { apex: 3 } }).problems).toEqual({ radius: problem });
    expect(read({ radius: "3", kerbApex: "2.9" }).problems).toEqual({});
    expect(read({ radius: "" }, { number: 5, radius: 3, kerbs: { apex: 3 } }).problems).toEqual({});
  });

  it("reads back whatever its cells show as what is stored", () => {
    const figure = (least: number, most: number) =>
      fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => tenths / 10);
    const kerbs = fc.record(
      { entry: figure(0, 5), apex: figure(0, 5), exit: figure(0, 5) },
      { requiredKeys: [] },
    );
    const corner = fc
      .record(
        {
          number: fc.constant(5),
          name: fc.constantFrom("Mill", "橋"),
          direction: fc.constantFrom("left" as const, "right" as const),
          bend: fc.constantFrom("hairpin" as const, "kink" as const),
          after: fc.constantFrom("none" as const, "short" as const, "long" as const),
          sector: fc.integer({ min: 1, max: 3 }),
          radius: figure(1, 400),
          width: figure(2, 20),
          angle: figure(5, 200),
          kerbs: kerbs.filter((some) => Object.keys(some).length > 0),
        },
        { requiredKeys: ["number"] },
      )
      .filter(({ radius = 400, kerbs: { apex = 0 } = {} }) => apex < radius);
    const kmh = fc.integer({ min: 36, max: 3000 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(corner, kmh, (stored, speed) => {
        const shown = Object.fromEntries(
          Object.entries(cellsOf(stored, speed / 3.6)).filter(([, text]) => text !== ""),
        );
        const { edit, problems } = read(shown);
        expect(problems).toEqual({});
        const patch = Object.fromEntries(
          Object.entries(edit.patch).filter(([, value]) => value !== undefined),
        );
        expect({ number: edit.number, ...patch }).toEqual(stored);
        expect(edit.lowestSpeed).toBeCloseTo(speed / 3.6, 9);
      }),
    );
  });

  it("never throws, whatever is typed", () => {
    fc.assert(
      fc.property(fc.constantFrom(...cornerCells), fc.string({ unit: "binary" }), (cell, text) => {
        const { problems, said } = read({ [cell]: text });
        expect(problems[cell] === undefined || said[cell] === undefined).toBe(true);
      }),
    );
  });
});
