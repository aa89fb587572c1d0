import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Corner } from "#domain";
import { readPasted } from "../../../../../src/screens/corners/layout/readPasted.ts";

const around = { car: {}, speeds: new Map() };
const read = (text: string, corners: readonly Corner[] = []) => readPasted(text, corners, around);
const edits = (text: string) => read(text).lines.map(({ edit }) => edit);

describe("corners pasted from a spreadsheet", () => {
  it("are read by their heads in any order, and a unit of a head goes with its figures", () => {
    const { lines, unknown } = read("Colour\tTurn\tL/R\tspeed (mph)\tRadius m\nred\t5\tL\t50\t42,5\n");
    expect(unknown).toEqual(["Colour"]);
    expect(lines).toMatchObject([
      { line: 2, edit: { number: 5, patch: { direction: "left", radius: 42.5 } }, problems: [] },
    ]);
    // 50 miles an hour are 22.352 m/s.
    expect(lines[0]?.edit?.lowestSpeed).toBeCloseTo(22.352, 9);
  });

  it("are read in the order of the table where no heads stand", () => {
    expect(edits("1\tMill\tr\th\tl\t1\t72\n2\t\tl\tkink\t120\n")).toEqual([
      {
        number: 1,
        patch: {
          name: "Mill",
          direction: "right",
          bend: "hairpin",
          after: "long",
          afterLength: undefined,
          sector: 1,
        },
        lowestSpeed: 20,
      },
      {
        number: 2,
        patch: { direction: "left", bend: "kink", after: undefined, afterLength: 120 },
      },
    ]);
  });

  it("are numbered as they stand where they have no numbers", () => {
    expect(edits("Mill\tleft\nChurch\tright").map((edit) => edit?.number)).toEqual([1, 2]);
    expect(edits("name;kind\nMill;slow\n;fast").map((edit) => edit?.number)).toEqual([1, 2]);
  });

  it("stand between tabs, semicolons or commas, with decimal commas where a comma is none", () => {
    const heads = ["number", "radius", "width"];
    for (const sign of ["\t", ";", ","])
      expect(
        edits(`${heads.join(sign)}\n${["3", sign === "," ? '"40,5"' : "40,5", "12"].join(sign)}`),
      ).toEqual([{ number: 3, patch: { radius: 40.5, width: 12 } }]);
  });

  it("with something wrong in them stay out whole, which is said", () => {
    const { lines } = read(
      "corner\tkind\tradius\n1\ttwisty\t40\n\tslow\t30\nx\tslow\t\n1\tfast\t\n2\tfast\t\n",
    );
    expect(lines.map(({ line, edit }) => [line, edit?.number])).toEqual([
      [2, undefined],
      [3, undefined],
      [4, undefined],
      [5, undefined],
      [6, 2],
    ]);
    expect(lines[0]).toMatchObject({
      edit: undefined,
      problems: [{ wrong: expect.stringMatching(/“twisty”/) }],
    });
    expect(lines[1]?.problems).toMatchObject([{ wrong: "The number of the corner is missing." }]);
    expect(lines[2]?.problems).toMatchObject([{ wrong: "Number: “x” is not a number." }]);
    expect(lines[3]?.problems).toMatchObject([{ wrong: "Corner 1 stands above already." }]);
  });

  it("say what a cell was read as", () => {
    expect(read("corner,kind,after\n4,h,250").lines[0]?.said).toEqual({
      number: "4",
      bend: "hairpin",
      after: "250 m",
    });
  });

  it("are nothing where nothing is pasted, and never throw", () => {
    expect(read(" \n\t\n")).toEqual({ lines: [], unknown: [] });
    const cell = fc.constantFrom("1", "left", "h", "250", "corner", "kind", '"', "\t", ";", ",", "\n", "x");
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(cell).map((cells) => cells.join("")),
        ),
        (text) => {
          const numbers = read(text).lines.flatMap(({ edit }) => edit?.number ?? []);
          expect(new Set(numbers).size).toBe(numbers.length);
        },
      ),
    );
  });
});
