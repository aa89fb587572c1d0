import { expect, test } from "vitest";
import { sayTrueSize } from "../../../../src/screens/rig/screenView.ts";

test("three screens of 60 cm (each 2·atan(30/65)) with frames of 2 cm, turned by 52.42°, at 65 cm fill 154.4°, worked out by trigonometry", () => {
  const three = { kind: "three", width: 0.6, eyeDistance: 0.65, bezel: 0.02, sideAngle: 52.42 } as const;
  expect(sayTrueSize(three)).toBe("49.6° across one, 154.4° across all three");
});

test("a picture as wide and as high as twice the distance fills a right angle both ways", () => {
  expect(sayTrueSize({ kind: "flat", width: 2, height: 2, eyeDistance: 1 })).toBe(
    "90.0° across, 90.0° upright",
  );
});

test("a curve seen from its own centre fills its arc: 70 cm of a radius of 70 cm are one radian", () => {
  expect(sayTrueSize({ kind: "curved", width: 0.7, radius: 0.7, eyeDistance: 0.7 })).toBe("57.3° across");
});

test("what cannot be is said with its reason, and nothing of a headset", () => {
  expect(sayTrueSize({ kind: "curved", width: 3, radius: 0.5, eyeDistance: 0.6 })).toMatch(
    /more than half a circle/,
  );
  expect(sayTrueSize({ kind: "headset", width: 1, eyeDistance: 1 })).toBeUndefined();
  expect(sayTrueSize({})).toBeUndefined();
});
