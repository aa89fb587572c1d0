import { expect, test } from "vitest";
import { cornerTime } from "../../../src/physics/cornerTime.ts";

test("before a tighter arc the car brakes within the wider one, with what grip the turning leaves", () => {
  // From 30 m/s on an arc whose limit that is, into one whose limit is 15 m/s. Walked backwards from the joint in small
  // steps: braking of 6 m/s² shrinks with the friction circle, a·√(1 − (v²/v_lim²)²).
  const [wide, tight, braking] = [900, 225, 6];
  const seconds = cornerTime(
    [
      { length: 120, limit: wide },
      { length: 15, limit: tight },
    ],
    { approachSpeed: 30, drive: 1e-9, braking },
  );
  const ds = 120 / 1e6;
  let squared = tight;
  let walked = 15 / 15;
  for (let at = 0; at < 120 - ds / 2; at += ds) {
    const left = Math.sqrt(Math.max(0, 1 - (squared / wide) ** 2));
    const next = Math.min(wide, squared + 2 * braking * left * ds);
    walked += (2 * ds) / (Math.sqrt(squared) + Math.sqrt(next));
    squared = next;
  }
  expect(seconds).toBeCloseTo(walked, 3);
});

test("a stretch without a length takes no time", () => {
  const straight = { length: 100, limit: Number.POSITIVE_INFINITY };
  const motion = { approachSpeed: 20, drive: 3, braking: 8 };
  const none = { length: 0, limit: Number.POSITIVE_INFINITY };
  expect(cornerTime([none, straight, none], motion)).toBe(cornerTime([straight], motion));
  expect(cornerTime([none], { ...motion, approachSpeed: 0 })).toBe(0);
});
