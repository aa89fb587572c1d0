import { describe, expect, it } from "vitest";
import { typeLaps } from "./simulatedDrivers.ts";

/**
 * Four digits repeat every ten seconds, so a lap ten seconds too slow that is typed without a remark looks like a
 * usual one: no rule can tell them apart. Where such a lap would beat the PB by hundredths, a wrong PB is stored; asking
 * about each would ask about every real one, three times as often as it asks now. The limit of one in a thousand therefore holds for drivers who remark
 * their mistakes, and stands here with the share of mistakes they may leave out.
 */
describe("drivers who type every lap as short as it is taken", () => {
  it("have no wrong lap but one in ten thousand when every mistake has its remark", () => {
    const { laps, wrong, wrongPbs } = typeLaps(1, 800, 0);
    expect(laps).toBeGreaterThan(60_000);
    expect(wrong / laps).toBeLessThanOrEqual(0.000_1);
    expect(wrongPbs).toBe(0);
  });

  it("have at most one in a thousand stored wrongly with a remark left out at every 25th mistake", () => {
    const { laps, wrong, wrongPbs } = typeLaps(2, 800, 0.04);
    expect(wrong).toBeGreaterThan(0);
    expect(wrong / laps).toBeLessThanOrEqual(0.001);
    expect(wrongPbs / laps).toBeLessThanOrEqual(0.000_2);
  });

  it("have a wrong PB in a few hundred laps at most when every second mistake goes without a remark, and wrong laps do not breed more", () => {
    const { laps, wrong, wrongPbs } = typeLaps(3, 800, 0.5);
    expect(wrongPbs / laps).toBeLessThanOrEqual(0.002);
    // One lap in 24 is then an unremarked mistake; about a third of those look like usual laps.
    expect(wrong / laps).toBeLessThanOrEqual(1 / 24 / 3);
  });

  it("need four digits for five laps in six, and are asked about one lap in forty at most", () => {
    const { laps, four, five, full, asked } = typeLaps(4, 400, 0.04);
    expect(four + five + full).toBe(laps);
    expect(four / laps).toBeGreaterThan(5 / 6);
    expect(asked / laps).toBeLessThan(1 / 40);
  });
});
