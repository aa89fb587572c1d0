import { describe, expect, test } from "vitest";
import { type ScreenSetup, screenView } from "#physics";
import {
  curvedGlassSays,
  sayLength,
  sayNoUpright,
  sayNoView,
  sayPlan,
  sayScreenView,
  saySharpness,
  saySquareTurn,
  screenViewReading,
  screenViewTitle,
  tooTightCurve,
} from "#words";

const seen = (setup: ScreenSetup) => {
  const view = screenView(setup);
  if (!view.known) throw new Error(JSON.stringify(view.reason));
  return view.value;
};
// 27 inches of 16:9 at 60 cm are 52.956° by 31.304° (worked out by trigonometry, test/reference/viewing-geometry).
const flat = { kind: "flat", width: 0.5977, height: 0.3362, distance: 0.6 } as const;
const three = {
  kind: "three",
  width: 0.6,
  height: 0.34,
  distance: 0.65,
  sideAngle: 52.42,
  bezel: 0.02,
} as const;

describe("the field of view in words", () => {
  test("what to set comes first, in whole degrees, across and upright", () => {
    const view = seen(flat);
    expect(screenViewTitle(view, "one")).toBe("Set the field of view to 53° across (31° upright)");
    expect(screenViewTitle(view, "upright")).toBe("Set the field of view to 31° upright (53° across)");
    expect(screenViewReading(view, undefined)).toBe("Then things look as large as they would from the seat.");
    expect(sayScreenView(view)).toBe("53.0° across, 31.3° upright");
  });

  test("of three screens one is told, and all together where the simulator asks for all", () => {
    const view = seen(three);
    expect(screenViewTitle(view, "one")).toBe("Set the field of view to 50° across (29° upright)");
    expect(screenViewTitle(view, "all")).toBe("Set the field of view to 154° across all three (29° upright)");
  });

  test("turned screens need a picture each, which is said; one flat picture does for screens in one line", () => {
    expect(screenViewReading(seen(three), 52.42)).toBe(
      "Then things look as large as they would from the seat, if the simulator draws three views, those at the sides turned by 52°. One flat picture stretched over all three screens cannot do that.",
    );
    // At 40 cm and 45° the outer ends, 72.4 cm aside, lie 2.4 cm behind the eye: more than 180°, by hand.
    expect(screenViewReading(seen({ ...three, distance: 0.4, sideAngle: 45, bezel: 0 }), 45)).toMatch(
      /cannot do that, and none is 180° wide or more\.$/,
    );
    expect(screenViewReading(seen({ ...three, sideAngle: 0 }), 0)).toMatch(/from the seat\.$/);
  });

  test("without a height nothing is said upright", () => {
    const view = seen({ ...flat, height: undefined });
    expect(screenViewTitle(view, "one")).toBe("Set the field of view to 53° across");
    expect(sayScreenView(view)).toBe("53.0° across");
  });

  test("it is said why upright cannot be set", () => {
    expect(sayNoUpright(seen(flat))).toBeUndefined();
    expect(sayNoUpright(seen({ ...flat, height: undefined }))).toBe(
      "For upright, type the height of the picture.",
    );
    // Half a circle of radius 1 seen from 60 cm: its ends lie behind the eye.
    const around = seen({ kind: "curved", width: 3.1, height: 0.34, radius: 1, distance: 0.6 });
    expect(sayNoUpright(around)).toMatch(/no flat picture is 180° wide or more/);
  });

  test("what is missing is named, else the reason", () => {
    expect(sayNoView(["eye to screen"], undefined)).toBe("To work it out, write down: eye to screen.");
    expect(sayNoView([], screenView({ ...flat, distance: 0 }))).toBe(
      "Not worked out: distance must be more than 0, is 0.",
    );
    expect(sayNoView([], screenView(flat))).toBeUndefined();
  });
});

describe("what stands beside it", () => {
  test("sixty pixels a degree are where single ones are no longer seen", () => {
    expect(saySharpness(44.9)).toMatch(/^45 pixels a degree: single pixels can be seen\./);
    expect(saySharpness(67.3)).toMatch(/^67 pixels a degree: .*no longer sees single pixels/);
  });

  test("the best turn is told as square, and as none where none is", () => {
    for (const now of [45, undefined])
      expect(saySquareTurn(52.42, now)).toBe(
        "Turned by 52°, each side screen faces the eye and is seen as the middle one is. Turned in farther it fills a little more of what you see, but at a slant.",
      );
    expect(saySquareTurn(52.42, 52)).toMatch(/stand square to the eye/);
    expect(saySquareTurn(106, 45)).toMatch(/no turn up to 90°/);
  });

  test("on a curved screen the middle is told to look smaller or larger than it is, by the upright angles", () => {
    const curve = { kind: "curved", width: 1.2, height: 0.34, radius: 1 } as const;
    // Near the glass a flat picture as wide is stretched towards its edges: its middle has to hold more than is seen there.
    expect(curvedGlassSays(seen({ ...curve, distance: 0.7 }))).toMatch(
      /middle things look smaller: 3[45]° .* on 27°/,
    );
    // From far away only the chord is seen, which is shorter than the glass.
    expect(curvedGlassSays(seen({ ...curve, distance: 3 }))).toMatch(
      /at the edges of a curved screen and in the middle/,
    );
    expect(curvedGlassSays(seen({ ...curve, width: 2.4, height: 0.8, distance: 8 }))).toMatch(
      /middle things look larger/,
    );
    expect(curvedGlassSays(seen({ ...curve, height: undefined, distance: 0.7 }))).toMatch(
      /less so in the middle/,
    );
  });

  test("a curve too tight for its glass says from which radius on it is not, in the unit chosen", () => {
    // Half a circle of 120 cm has a radius of 120 ÷ π = 38.197 cm.
    expect(tooTightCurve(1.2, "cm")).toEqual({
      wrong: "A picture 120 cm wide would be more than half a circle at this radius.",
      right: "Write a radius of 38.2 cm or more, or a smaller width.",
    });
    expect(tooTightCurve(1.2, "in").right).toMatch(/15\.1 in or more/);
  });

  test("lengths are told in the unit chosen, an inch being 2.54 cm", () => {
    expect([sayLength(0.5977, "cm"), sayLength(0.6858, "in"), sayLength(0.65, "cm")]).toEqual([
      "59.8 cm",
      "27 in",
      "65 cm",
    ]);
  });

  test("the drawing is told to who does not see it", () => {
    expect(sayPlan("three", { width: "60 cm", distance: "65 cm" }, seen(three))).toBe(
      "Three screens from above, each 60 cm wide, 65 cm from the eye. Seen under 49.6° across one, 154.4° across all three, 29.3° upright.",
    );
    expect(sayPlan("flat", { width: "60 cm", distance: "0 cm" }, undefined)).toBe(
      "One flat screen from above, 60 cm wide, 0 cm from the eye.",
    );
  });
});
