import { describe, expect, test } from "vitest";
import type { RigSettings } from "#domain";
import { drawnSetup, readRecord, readSum } from "../../../../../src/screens/rig/screen/readSum.ts";
import {
  inUnit,
  type SumTexts,
  sizeTexts,
  startTexts,
  withSize,
  wordsOfSum,
} from "../../../../../src/screens/rig/screen/sumTexts.ts";
import { sayTrueSize } from "../../../../../src/screens/rig/screenView.ts";

const id = "0192aaaa-0000-7000-8000-000000000001";
const empty = startTexts(undefined, id);
const inForce = {
  id,
  createdAt: 1,
  updatedAt: 1,
  from: "2026-11-03",
  name: "seat moved",
  screen: { kind: "flat", width: 0.598, height: 0.336, eyeDistance: 0.65, pixelsAcross: 2560 },
  view: { degrees: 49, axis: "horizontal", note: "two clicks" },
  wheel: { gainPercent: 55 },
  pedals: { brakeForceKg: 40 },
  seat: {},
  note: "",
} as const satisfies RigSettings;

describe("the size of a picture, typed one way or the other", () => {
  test("a diagonal and a shape give width and height", () => {
    // 27 inches of 16:9: 59.77 by 33.62 cm (test/reference/viewing-geometry).
    const texts = withSize(empty, { diagonal: "27" });
    expect(sizeTexts(texts)).toEqual({ diagonal: "27", width: "59.77", height: "33.62", shape: "16:9" });
    // 34 inches of 21:9: 79.38 by 34.02 cm.
    expect(sizeTexts(withSize(texts, { diagonal: "34 in", shape: "21:9" }))).toMatchObject({
      width: "79.38",
      height: "34.02",
    });
    expect(sizeTexts(withSize(texts, { diagonal: "68.58 cm" })).width).toBe("59.77");
  });

  test("width and height give the diagonal back, and the shape where it is one that is sold", () => {
    const texts = withSize(withSize(empty, { width: "59.8" }), { height: "33.6" });
    expect(sizeTexts(texts)).toMatchObject({ diagonal: "27", shape: "16:9" });
    expect(sizeTexts(withSize(texts, { height: "44" })).shape).toBe("own");
  });

  test("one side and a shape give the other and the diagonal", () => {
    // 60 ÷ 16 × 9 = 33.75, √(60² + 33.75²) = 68.84 cm = 27.1 in, by hand.
    const wide = withSize(empty, { width: "60" });
    expect(sizeTexts(wide)).toEqual({ width: "60", height: "33.75", diagonal: "27.1", shape: "16:9" });
    // 40 ÷ 9 × 16 = 71.11, √(71.11² + 40²) = 81.59 cm = 32.1 in, by hand.
    const high = withSize(empty, { height: "40" });
    expect(sizeTexts(high)).toEqual({ width: "71.11", height: "40", diagonal: "32.1", shape: "16:9" });
    // 60 ÷ 4 × 3 = 45.
    expect(sizeTexts(withSize(wide, { shape: "4:3" }))).toMatchObject({ width: "60", height: "45" });
  });

  test("what is typed last leads, and nothing beside it is left empty", () => {
    const texts = withSize(withSize(empty, { diagonal: "27" }), { width: "60" });
    expect(sizeTexts(texts)).toMatchObject({ width: "60", height: "33.75", diagonal: "27.1" });
    expect(sizeTexts(withSize(texts, { diagonal: "32" }))).toMatchObject({
      diagonal: "32",
      width: "70.84",
      height: "39.85",
    });
    const high = withSize(withSize(empty, { height: "40" }), { diagonal: "32" });
    expect(sizeTexts(high)).toMatchObject({ diagonal: "32", height: "39.85", shape: "16:9" });
  });

  test("both sides typed decide the shape; one of them taken out waits for another figure", () => {
    const texts = withSize(withSize(empty, { width: "60" }), { height: "40" });
    expect(sizeTexts(texts)).toMatchObject({ width: "60", height: "40", shape: "own" });
    const half = withSize(texts, { height: "" });
    expect(sizeTexts(half)).toMatchObject({ width: "60", height: "", shape: "own" });
    expect(sizeTexts(withSize(half, { shape: "16:9" }))).toMatchObject({ width: "60", height: "33.75" });
  });

  test("without a shape what was typed stands, and a record of one side takes none to be so", () => {
    const none = withSize(withSize(withSize(empty, { shape: "own" }), { height: "40" }), { diagonal: "32" });
    expect(sizeTexts(none)).toMatchObject({ height: "40", diagonal: "32", width: "" });
    const stored = startTexts({ ...inForce, screen: { kind: "flat", width: 0.6, eyeDistance: 0.65 } }, id);
    expect(sizeTexts(stored)).toMatchObject({ width: "60", height: "", shape: "own" });
    expect(readSum(stored).view).toMatchObject({ value: { drawnVertical: undefined } });
  });

  test("another shape is typed as width to height, and begins as what it was", () => {
    const sides = withSize(withSize(empty, { width: "80" }), { height: "40" });
    const another = withSize(sides, { shape: "own" });
    expect(another.own).toBe("80:40");
    expect(sizeTexts(another)).toMatchObject({ width: "80", height: "40", shape: "own" });
    const texts = withSize(withSize({ ...empty, shape: "own" }, { own: "4:3" }), { diagonal: "5" });
    // A rectangle of 4 by 3 has a diagonal of 5.
    expect(sizeTexts(texts)).toMatchObject({ width: "10.16", height: "7.62" });
    expect(readSum(withSize(texts, { own: "wide" })).problems.own).toMatchObject({
      wrong: "“wide” is no shape.",
    });
  });

  test("lengths change their unit with the switch and back; what names its own stays", () => {
    const texts = {
      ...empty,
      by: "sides",
      width: "59.8",
      eyeDistance: "65",
      bezel: "12 mm",
      radius: "",
    } as const;
    const inches = inUnit(texts, "in");
    expect(inches).toMatchObject({
      width: "23.54",
      eyeDistance: "25.59",
      bezel: "12 mm",
      radius: "",
      unit: "in",
    });
    expect(inUnit(inches, "cm")).toMatchObject({ width: "59.79", eyeDistance: "65", bezel: "12 mm" });
    expect(readSum(inches).screen.bezel).toBeUndefined();
    expect(readSum({ ...inches, kind: "three" }).screen.bezel).toBe(0.012);
  });
});

describe("a record made of the sum", () => {
  const read = (texts: SumTexts, from: RigSettings | undefined = inForce) =>
    readRecord(texts, readSum(texts), from, "2026-11-25");

  test("starts as the one in force, and keeps what the sum does not know", () => {
    const texts = { ...startTexts(inForce, id), eyeDistance: "60" };
    const reading = read(texts);
    expect(reading).toMatchObject({
      ok: true,
      value: {
        from: "2026-11-25",
        name: "",
        screen: { ...inForce.screen, eyeDistance: 0.6 },
        // 2·atan(29.9/60), worked out by hand: 52.97°.
        view: { degrees: 53, axis: "horizontal", note: "two clicks" },
        wheel: { gainPercent: 55 },
        pedals: { brakeForceKg: 40 },
      },
    });
    expect(reading.ok && sayTrueSize(reading.value.screen)).toMatch(/^53\.0° across/);
  });

  test("takes the angle that the simulator asks for", () => {
    const texts = { ...startTexts(inForce, id), asked: "upright" } as const;
    expect(read(texts)).toMatchObject({ value: { view: { degrees: 29, axis: "vertical" } } });
    const three = { ...texts, kind: "three", sideAngle: "45", bezel: "1.2", asked: "all" } as const;
    expect(read(three)).toMatchObject({
      value: {
        view: { axis: "horizontal", degrees: 147 },
        screen: { kind: "three", sideAngle: 45, bezel: 0.012 },
      },
    });
  });

  test("is refused while something is missing, at the field that would help", () => {
    expect(read(empty, undefined)).toMatchObject({ ok: false, problems: { diagonal: {}, eyeDistance: {} } });
    const texts = { ...withSize(empty, { diagonal: "27" }), eyeDistance: "65" };
    expect(read(texts, undefined)).toMatchObject({ ok: true });
    expect(read({ ...texts, kind: "curved" }, undefined)).toMatchObject({
      ok: false,
      problems: { radius: {} },
    });
    const noHeight = { ...empty, by: "sides", width: "60", eyeDistance: "65" } as const;
    expect(read({ ...noHeight, asked: "upright" }, undefined)).toMatchObject({
      ok: false,
      problems: { height: { wrong: "Upright needs the height of the picture." } },
    });
    expect(read(noHeight, undefined)).toMatchObject({ ok: true, value: { view: { degrees: 50 } } });
  });

  test.each([
    [{ eyeDistance: "0" }, "eyeDistance", /0 is out of range/],
    [{ kind: "three", sideAngle: "91" }, "sideAngle", /91 is out of range/],
    [{ kind: "curved", radius: "15" }, "radius", /out of range/],
    [{ kind: "curved", radius: "20", eyeDistance: "70" }, "radius", /more than half a circle/],
    [{ kind: "three", sideAngle: "45", bezel: "-1" }, "bezel", /out of range/],
  ] as const)("%j says what is wrong at its field, and is drawn all the same", (typed, field, wrong) => {
    const texts = { ...withSize(empty, { width: "80" }), eyeDistance: "65", ...typed };
    const { problems, view } = readSum(texts);
    expect(problems[field]).toMatchObject({ wrong: expect.stringMatching(wrong) });
    expect(view?.known).not.toBe(true);
    expect(read(texts).ok).toBe(false);
    expect(drawnSetup(texts)).toMatchObject({ isWhole: true, setup: { width: 0.8 } });
  });

  test("a curve is read as it is sold, in millimetres, and told so where the figure is out of range", () => {
    const curve = (radius: string) =>
      readSum({ ...withSize(empty, { width: "80" }), kind: "curved", eyeDistance: "65", radius });
    expect(curve("1500R").screen.radius).toBe(1.5);
    expect(curve("1800 r").screen.radius).toBe(1.8);
    expect(curve("150").screen.radius).toBe(1.5);
    expect(curve("1500").problems.radius).toMatchObject({
      wrong: expect.stringMatching(/1500 is out of range/),
      right: "A screen sold as 1500R has a radius of 150 cm: write 1500R, or that.",
    });
    expect(curve("15").problems.radius).toMatchObject({
      right: expect.stringMatching(/^Write a number from 20/),
    });
  });

  test("what is not known yet is drawn as something usual, and said to be so", () => {
    expect(drawnSetup(empty)).toMatchObject({ isWhole: false, setup: { width: 0.6, distance: 0.65 } });
  });
});

test("a half-typed sum is known by its figures", () => {
  expect(wordsOfSum({ ...withSize(empty, { diagonal: "27" }), eyeDistance: "65" })).toBe(
    "27 in 16:9, 65 cm from the eye",
  );
  expect(wordsOfSum(null)).toBe("");
  expect(wordsOfSum(empty)).toBe("");
});
