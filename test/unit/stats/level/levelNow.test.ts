import { describe, expect, test } from "vitest";
import { levelNow } from "../../../../src/stats/level/levelNow.ts";
import { aPosterior, type ToldCell } from "./aPosterior.ts";

describe("whether a level moves, by hand", () => {
  const of = (...cells: ToldCell[]) => levelNow(aPosterior(cells, { count: 9 }));
  /** One that moves by a share of the lap in four sessions, known to a deviation. */
  const moving = (
    weight: number,
    change: number,
    deviation: number,
    more: Partial<ToldCell> = {},
  ): ToldCell => ({
    kind: "moving",
    weight,
    end: { b: change / 4, bb: (deviation / 4) ** 2 },
    ...more,
  });

  test("is level by the weight of who is still, and of who moves less than 0.1 % in four sessions", () => {
    // By tables of the normal distribution: from 1 to 3 deviations lie 0.9987 − 0.8413.
    const { chanceLevel, isLevel } = of({ weight: 0.5 }, moving(0.5, -0.002, 0.001));
    expect(chanceLevel).toBeCloseTo(0.5 + 0.5 * 0.1573, 4);
    expect(isLevel).toBe(false);
    expect(of(moving(1, 0.002, 0.001)).chanceLevel).toBeCloseTo(0.1573, 4);
    // Of a trend that is halved each session, four are 15/16 of it.
    const fading = { kind: "moving", phi: 0.5, end: { b: -0.001 } } as const;
    expect(of(fading).chanceLevel).toBe(1);
    expect(of({ ...fading, end: { b: -0.0011 } }).chanceLevel).toBe(0);
  });

  test("is said to be level over 0.8", () => {
    expect(of({ weight: 0.81 }, moving(0.19, -0.01, 0.001)).isLevel).toBe(true);
    expect(of({ weight: 0.79 }, moving(0.21, -0.01, 0.001)).isLevel).toBe(false);
  });

  test("is never said to be level where who moves very likely rises, if that is more likely than not", () => {
    const rising = (weight: number, deviation: number) =>
      of({ weight: 1 - weight }, moving(weight, 0.0004, deviation)).isLevel;
    expect(rising(0.55, 0.0001)).toBe(false);
    expect(rising(0.45, 0.0001)).toBe(true);
    // 0.90 of the normal distribution lies above −1.28 deviations, 0.97 above −1.88.
    expect(rising(0.55, 0.0004 / 1.28)).toBe(true);
    expect(rising(0.55, 0.0004 / 1.88)).toBe(false);
  });

  test("is level since the session at which half of who is still or has stopped has", () => {
    const stopped = (weight: number, since: number) => ({ kind: "stopped", weight, since }) as const;
    expect(of({ weight: 0.3 }, stopped(0.3, 5), stopped(0.4, 7)).levelSince).toBe(5);
    expect(of({ weight: 0.3 }, stopped(0.1, 5), stopped(0.6, 7)).levelSince).toBe(7);
    expect(of({ weight: 0.3 }, stopped(0.7, 3)).levelSince).toBe(3);
    expect(of({ weight: 0.3 }, stopped(0.7, 2)).levelSince).toBeUndefined();
    expect(of({ weight: 0.6 }, stopped(0.4, 7)).levelSince).toBeUndefined();
    const late = aPosterior([{ weight: 0.3 }, stopped(0.7, 5)], { count: 9, from: 20 });
    expect(levelNow(late).levelSince).toBe(25);
    // Not where that it is level may not be said.
    expect(of(stopped(0.7, 5), moving(0.3, -0.01, 0.001)).levelSince).toBeUndefined();
  });

  test("moves again since the session at which half of who has started had, where that is over 0.8", () => {
    const started = (weight: number, since: number, change = -0.01) =>
      moving(weight, change, 0.0001, { kind: "started", since });
    expect(of({ weight: 0.1 }, started(0.5, 4), started(0.4, 6)).movingSince).toBe(4);
    expect(of({ weight: 0.1 }, started(0.4, 4), started(0.5, 6)).movingSince).toBe(6);
    expect(of({ weight: 0.25 }, started(0.75, 4)).movingSince).toBeUndefined();
    expect(of(started(1, 4, 0.0001)).movingSince).toBeUndefined();
    expect(of(moving(1, -0.01, 0.0001)).movingSince).toBeUndefined();
    const late = aPosterior([started(1, 4)], { count: 9, from: 20 });
    expect(levelNow(late).movingSince).toBe(24);
  });
});
