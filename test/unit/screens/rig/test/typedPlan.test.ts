import { describe, expect, it } from "vitest";
import type { RigSettings } from "#domain";
import { rigFields } from "../../../../../src/screens/rig/rigFields.ts";
import {
  blankPlan,
  readEffort,
  readPlan,
  readSides,
  saidValue,
  type TypedPlan,
  writeSmallest,
} from "../../../../../src/screens/rig/test/typedPlan.ts";

const rig: RigSettings = {
  id: "rig",
  createdAt: 1,
  updatedAt: 1,
  from: "2026-11-03",
  name: "",
  screen: { width: 0.7 },
  view: {},
  wheel: { gainPercent: 72 },
  pedals: {},
  seat: {},
  note: "",
};
const field = (part: string, key: string) => rigFields.find((one) => one.part === part && one.key === key);
const gain = field("wheel", "gainPercent");
const plan = (more: Partial<TypedPlan> = {}): TypedPlan => ({
  ...blankPlan,
  field: "wheel.gainPercent",
  valueB: "54",
  ...more,
});
const context = {
  field: gain,
  rig,
  comboName: "Varnholt Ring · club hatch",
  offeredMs: 118,
  offeredPairs: 8,
  isTaken: false,
};

describe("the settings of a test", () => {
  it("are the value in force and the one typed, each with its unit", () => {
    expect(readSides(plan(), gain, rig)).toEqual({
      ok: true,
      value: {
        sayA: "gain 72 %",
        sayB: "gain 54 %",
        field: "wheel.gainPercent",
        valueA: 72,
        valueB: 54,
      },
    });
  });

  it("are both typed where no record says how it is now", () => {
    expect(readSides(plan({ valueA: "80" }), gain, undefined)).toMatchObject({
      ok: true,
      value: { valueA: 80, valueB: 54 },
    });
    expect(readSides(plan(), gain, undefined)).toMatchObject({
      ok: false,
      problems: { valueA: { right: "Type the gain." } },
    });
  });

  it("are told in the unit of their field, whatever they are stored in", () => {
    const distance = field("screen", "eyeDistance");
    const kind = field("screen", "kind");
    const bezel = field("screen", "bezel");
    if (!distance || !kind || !bezel) throw new Error("fields are missing");
    expect(saidValue(distance, 0.65)).toBe("65 cm");
    expect(saidValue(kind, "three")).toBe("three");
    expect(saidValue(bezel, 0.02)).toBe("2 cm");
  });

  it("have to differ, in values and in words", () => {
    expect(readSides(plan({ valueB: "72 %" }), gain, rig)).toMatchObject({
      ok: false,
      problems: { valueB: { wrong: "B is the same as A." } },
    });
    const gloves = plan({ differs: "words", wordsA: " without ", wordsB: "with gloves" });
    expect(readSides(gloves, undefined, rig)).toEqual({
      ok: true,
      value: { sayA: "without", sayB: "with gloves" },
    });
    expect(readSides({ ...gloves, wordsB: "without" }, undefined, rig).ok).toBe(false);
    expect(readSides({ ...gloves, wordsA: "" }, undefined, rig)).toMatchObject({
      problems: { wordsA: { wrong: "Nothing stands there." } },
    });
  });

  it("are asked for where no value is picked", () => {
    expect(readSides(plan({ field: "" }), undefined, rig)).toMatchObject({
      problems: { field: { right: "Choose what is different between A and B." } },
    });
  });
});

describe("a plan", () => {
  it("takes what is offered where nothing else is typed", () => {
    const read = readPlan(plan(), context);
    expect(read).toMatchObject({
      ok: true,
      value: { smallestMs: 120, lapsARun: 6, pairs: 8, figure: "usual" },
    });
    expect(read.ok && read.value.question).toBe(
      "Does gain 54 % instead of gain 72 % make me faster? Varnholt Ring · club hatch",
    );
  });

  it("takes what is typed, and asks for at least six pairs and five laps", () => {
    const typed = plan({ smallest: "0,25", laps: "8", pairs: "10", question: "Less gain?" });
    expect(readPlan(typed, context)).toMatchObject({
      ok: true,
      value: { smallestMs: 250, lapsARun: 8, pairs: 10, question: "Less gain?" },
    });
    const few = readPlan(plan({ pairs: "5", laps: "4", smallest: "" }), context);
    expect(few.ok ? [] : Object.keys(few.problems).filter((key) => key in few.problems)).toEqual(
      expect.arrayContaining(["smallest", "laps", "pairs"]),
    );
  });

  it("is refused while another test of the combo is not over", () => {
    expect(readPlan(plan(), { ...context, isTaken: true })).toMatchObject({
      ok: false,
      problems: { comboId: { right: "Finish it or stop it first." } },
    });
  });

  it("takes the suggested question where the field was emptied", () => {
    const read = readPlan(plan({ question: " " }), context);
    expect(read.ok && read.value.question).toBe(
      "Does gain 54 % instead of gain 72 % make me faster? Varnholt Ring · club hatch",
    );
  });

  it("never offers a difference of nothing", () => {
    expect(writeSmallest(118)).toBe("0.12");
    expect(writeSmallest(2)).toBe("0.01");
    expect(readEffort(plan(), undefined).smallest.problem).toBeDefined();
  });
});
